import type { AimedCondition } from "../../compatibility";
import { factUnits } from "../../plan/inner";
import { within } from "../figure";
import type { Means } from "./means";

/** What to do that a condition be met, as a clause; for some parties, the one it is about if none is named. */
export function conditionTold(
  { on, of, wanted, aim }: AimedCondition,
  { messages, figure, kinds, named, listed }: Means,
  parties: readonly AimedCondition["of"][],
): string {
  const [words, range] = "oneOf" in wanted ? [wanted.oneOf, {}] : [[], wanted];
  const those = parties.length > 0 ? parties : [of];
  const { who, whom, many } = named(those);
  return messages.conditions[on]({
    of: who,
    ofObject: whom,
    many,
    ...kinds(of),
    several: listed([...new Set(those.map((party) => kinds(party).several))]),
    wanted:
      "oneOf" in wanted ? "" : figure(within({ ...(aim ?? wanted), unit: wanted.unit ?? factUnits[on] })),
    words,
    min: range.min,
    max: range.max,
    figure,
  });
}
