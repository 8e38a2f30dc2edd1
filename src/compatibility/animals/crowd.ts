import type { Animals } from "../../plan";
import type { TraitPath, TraitValue } from "../../species";
import { wantedKin } from "./wanted";

/** Some animals, and what may be true of their kind. */
export interface Counted {
  readonly animals: Animals;
  /** The values of a trait that a source supports, the adopted one first; none where it is unknown. */
  readonly standing: <Path extends TraitPath>(path: Path) => readonly TraitValue<Path>[];
}

/** By the adopted facts, or at one end of what may be true. */
export type Estimate = "likely" | "least" | "greatest";

/** How many animals a plan will have once there are as many of each species as belong together. */
export interface Crowd {
  readonly end: Estimate;
  /** The animals of a species, over all groups of it and the form that some animals have. */
  readonly of: (animals: Pick<Animals, "id" | "form">) => number;
}

/** Where nothing is counted. */
export const noCrowd: Crowd = { end: "likely", of: () => 0 };

/** The likely numbers first, then the smallest and the greatest that may be wanted. */
export function crowdsOf(groups: readonly Counted[]): readonly Crowd[] {
  const numbers = new Map(groups.map((group) => [keyOf(group.animals), numbersWanted(group)]));
  return (["likely", "least", "greatest"] as const).map((end) => ({
    end,
    of: (animals) => numbers.get(keyOf(animals))?.[end] ?? 0,
  }));
}

const keyOf = ({ id, form = "" }: Pick<Animals, "id" | "form">) => `${id} ${form}`;

/** How many animals of a species are wanted, as the animals of a group have it. */
export function numbersWanted({ animals, standing }: Counted): Readonly<Record<Estimate, number>> {
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
}

/** What may be true of a trait: also that nobody knows it. */
export const orUnknown = <Value>(values: readonly Value[]): readonly (Value | undefined)[] =>
  values.length > 0 ? values : [undefined];
