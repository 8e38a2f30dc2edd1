import { onceOfEachObject } from "../../made-once";
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
export interface Summing<Name extends string = string, Sum = unknown> {
  /** By which name the rule sees the sum. */
  readonly name: Name;
  /** Traits without which a group cannot be summed up. */
  readonly needs: readonly TraitPath[];
  /** The traits that a sum rests on: trait by trait, in one order in whatever order the groups stand. */
  readonly restsOn: <Group extends Summed>(
    groups: readonly Group[],
  ) => readonly { readonly group: Group; readonly trait: TraitPath }[];
  /** The sum that is likely first, then the least and the greatest. */
  readonly ends: (groups: readonly Summed[]) => readonly Sum[];
}

/** The ends of a sum of some groups, made out once for all rules. */
export const endsOf = /* @__PURE__ */ onceOfEachObject(({ ends }: Summing) => onceOfEachObject(ends));

/** What may be true of a trait: also that nobody knows it. */
export const orUnknown = <Value>(values: readonly Value[]): readonly (Value | undefined)[] =>
  values.length > 0 ? values : [undefined];
