import type { Verdict } from "../../compatibility";
import { listOf, objectOf, oneOf } from "../../errors";

const outcomes = ["suitable", "conditional", "unsuitable", "undetermined"];

/** The verdict itself, or an InvalidInputError where it lacks what a report reads. */
export function checkedVerdict(verdict: Verdict): Verdict {
  const { outcome, bounds, parties, findings, conditions, met, open } = objectOf(verdict, "verdict");
  oneOf(outcome, outcomes, "verdict.outcome");
  const { atBest, atWorst } = objectOf(bounds, "verdict.bounds");
  oneOf(atBest, outcomes, "verdict.bounds.atBest");
  oneOf(atWorst, outcomes, "verdict.bounds.atWorst");
  for (const [name, list] of Object.entries({ parties, findings, conditions, met, open })) {
    for (const [index, item] of listOf<object>(list, `verdict.${name}`).entries()) {
      objectOf(item, `verdict.${name}[${index}]`);
    }
  }
  return verdict;
}
