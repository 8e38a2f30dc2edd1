import type { Problem } from "../../errors";
import { currents, foods, grounds, lights, sexes, zones } from "../../species/inner";
import { plantings } from "../choices";
import { type FactName, isWorded, type WordedFact } from "./read-fact";

type Word = string | boolean;

const yesOrNo: readonly Word[] = [true, false];

/** The words that a fact may be answered with; none where each species has its own. */
const words = (): Readonly<Record<WordedFact, readonly Word[] | undefined>> => ({
  "tank.lid": yesOrNo,
  "tank.substrate": grounds,
  "tank.plants": plantings,
  "tank.flow.calmest": currents,
  "tank.flow.strongest": currents,
  "group.sex": sexes,
  "group.form": undefined,
  "group.grown": yesOrNo,
  "group.longFins": yesOrNo,
  "group.company": yesOrNo,
  "group.offerings": [...foods, ...zones, ...lights, "apart"],
});

/** The words wanted by a condition that are no answer to its fact: no plan could ever meet them. */
export function wordProblems(on: FactName, wanted: readonly Word[]): readonly Problem[] {
  const known = isWorded(on) ? words()[on] : undefined;
  if (!known) return [];
  return wanted.flatMap((word, index) =>
    known.includes(word)
      ? []
      : [
          {
            path: ["wanted", "oneOf", index],
            code: "word",
            expected: `one of ${known.join(", ")}`,
            found: word,
          },
        ],
  );
}
