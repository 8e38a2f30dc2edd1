import type { Finding } from "../compatibility";
import type { Condition } from "../plan";

/** What findings ask for. */
export const conditionsOf = (findings: readonly Finding[]): readonly Condition[] =>
  findings.flatMap((finding) => (finding.weight === "restricting" ? [finding.condition] : []));
