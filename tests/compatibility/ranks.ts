import type { Outcome, Verdict, Weight } from "../../src/compatibility";

/** The outcomes, the best first. */
const ladder: readonly Outcome[] = ["suitable", "conditional", "unsuitable"];

export const rank = (outcome: Outcome) => ladder.indexOf(outcome);

/** Whether all that one verdict holds possible lies within what the other does. */
export const lieWithin = (inner: Verdict["bounds"], outer: Verdict["bounds"]) =>
  rank(outer.atBest) <= rank(inner.atBest) && rank(inner.atWorst) <= rank(outer.atWorst);

/** The outcome that findings of these weights add up to. */
export function outcomeOf(weights: readonly Weight[]): Outcome {
  if (weights.includes("blocking")) return "unsuitable";
  return weights.includes("restricting") ? "conditional" : "suitable";
}
