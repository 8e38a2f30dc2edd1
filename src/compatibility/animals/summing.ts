import type { Animals } from "../../plan";
import type { TraitPath, TraitValue } from "../../species";

/** Some animals, and what may be true of their kind. */
export interface Summed {
  readonly animals: Animals;
  /** The values of a trait that a source supports, the adopted one first; none where it is unknown. */
  readonly standing: <Path extends TraitPath>(path: Path) => readonly TraitValue<Path>[];
}

/** By the adopted facts, or at one end of what may be true. */
export type Estimate = "likely" | "least" | "greatest";

/** How the groups of a plan are summed up for a rule. */
export interface Summing<Sum> {
  /** Traits without which a group cannot be summed up. */
  readonly needs: readonly TraitPath[];
  /** The traits that a sum rests on: trait by trait, in one order in whatever order the groups stand. */
  readonly restsOn: <Group extends Summed>(
    groups: readonly Group[],
  ) => readonly { readonly group: Group; readonly trait: TraitPath }[];
  /** What is likely first, then the least and the greatest. */
  readonly sums: (groups: readonly Summed[]) => readonly Sum[];
}

/** What may be true of a trait: also that nobody knows it. */
export const orUnknown = <Value>(values: readonly Value[]): readonly (Value | undefined)[] =>
  values.length > 0 ? values : [undefined];
