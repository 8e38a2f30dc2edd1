import type { AimedCondition } from "../../compatibility";
import { factUnits } from "../../plan/inner";
import type { Means } from "./means";

/** What to do that a condition be met, as a clause. */
export function conditionTold(
  { on, of, wanted, aim }: AimedCondition,
  { messages, figure, kinds, named }: Means,
): string {
  const [words, range] = "oneOf" in wanted ? [wanted.oneOf, {}] : [[], wanted];
  const { who, whom, many } = named([of]);
  return messages.conditions[on]({
    of: who,
    ofObject: whom,
    many,
    ...kinds(of),
    wanted: "oneOf" in wanted ? "" : figure({ ...(aim ?? wanted), unit: wanted.unit ?? factUnits[on] }),
    words,
    min: range.min,
    max: range.max,
    figure,
  });
}
