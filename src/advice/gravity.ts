import type { Finding, OpenQuestion, Weight } from "../compatibility";
import { decides } from "../compatibility/inner";

/** How grave what is told is: 3 what rules out, 2 what nobody can tell, 1 what restricts, 0 all else. */
export function gravityOf(weight: Weight, couldBe: Weight | undefined): number {
  if (weight === "blocking") return 3;
  if (weight === "advisory" && couldBe) return 2;
  return weight === "restricting" ? 1 : 0;
}

/** How grave a finding is. */
export const gravityOfFinding = (finding: Finding): number =>
  gravityOf(finding.weight, finding.weight === "advisory" ? finding.couldBe : undefined);

/** What nobody knows is as grave as what nobody can tell in advance, where the outcome hangs on it. */
export const gravityOfOpen = (question: OpenQuestion): number => (decides(question) ? 2 : 0);
