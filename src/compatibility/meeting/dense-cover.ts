import type { Finding } from "../verdict/verdict";

/** The share of cover in which all settle that ask for company; undefined where none does. */
export function coverInsteadOfCompany(findings: readonly Finding[]): number | undefined {
  const shares = findings.flatMap(({ rule, measures }) => {
    const share = rule === "settling-company" && measures?.cover;
    return share && "value" in share && typeof share.value === "number" ? [share.value] : [];
  });
  return shares.length > 0 ? Math.max(...shares) : undefined;
}
