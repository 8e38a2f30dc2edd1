import type { Outcome } from "../compatibility";

/** The outcomes, the best first. */
const ranked: readonly Outcome[] = ["suitable", "conditional", "undetermined", "unsuitable"];

/** Whether an outcome is as good as another. */
export const isAsGood = (outcome: Outcome, other: Outcome): boolean =>
  ranked.indexOf(outcome) <= ranked.indexOf(other);
