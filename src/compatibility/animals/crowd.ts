import { onceOfEachObject } from "../../made-once";
import type { Animals } from "../../plan";
import type { TraitPath } from "../../species";
import { type Estimate, orUnknown, type Summed, type Summing } from "./summing";
import { wantedBy, wantedKin } from "./wanted";

/** How many animals a plan will have once there are as many of each species as belong together. */
export interface Crowd {
  /** The animals of a species, over all groups of it and the form that some animals have. */
  readonly of: (animals: Pick<Animals, "id" | "form">) => number;
}

/** Nobody is counted. */
export const noCrowd: Crowd = { of: () => 0 };

/** Counts the animals of a plan, for rules whose `sums` it is. */
export const counting: Summing<"crowd", Crowd> = {
  name: "crowd",
  needs: [],
  restsOn: (groups) => wantedBy.flatMap((trait) => groups.map((group) => ({ group, trait }))),
  ends: (groups) => {
    const numbers = new Map(groups.map((group) => [keyOf(group.animals), numbersWanted(group)]));
    return (["likely", "least", "greatest"] as const).map((end) => ({
      of: (animals) => numbers.get(keyOf(animals))?.[end] ?? 0,
    }));
  },
};

const keyOf = ({ id, form = "" }: Pick<Animals, "id" | "form">) => `${id} ${form}`;

/** How many animals of a species are wanted, as the animals of a group have it; made out once for each. */
export const numbersWanted = /* @__PURE__ */ onceOfEachObject(
  ({ animals, standing }: Summed): Readonly<Record<Estimate, number>> => {
    const each = <Path extends TraitPath>(path: Path) => orUnknown(standing(path));
    const numbers = each("social.living").flatMap((living) =>
      each("social.group").flatMap((group) =>
        each("social.femalesPerMale").map((ratio) => {
          const { count = 1 } = wantedKin({
            party: animals,
            ...(living && { "social.living": living }),
            ...(group && { "social.group": group }),
            ...(ratio !== undefined && { "social.femalesPerMale": ratio }),
          });
          return count;
        }),
      ),
    );
    return { likely: numbers[0] ?? 1, least: Math.min(...numbers), greatest: Math.max(...numbers) };
  },
);
