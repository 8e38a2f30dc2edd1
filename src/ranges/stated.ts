import type { PartialRange } from "./range";

/** A range of the ends that are stated; one that is not is absent. */
export function stated(min: number | undefined, max: number | undefined): PartialRange {
  if (min === undefined) return max === undefined ? {} : { max };
  return max === undefined ? { min } : { min, max };
}

/** The ends that something states, and nothing else of it. */
export const statedOf = ({ min, max }: PartialRange): PartialRange => stated(min, max);

/** A range with the ends that it states, in a unit if there is one. */
export function statedIn<Unit>(
  { min, max }: PartialRange,
  unit: Unit | undefined,
): PartialRange & { readonly unit?: Unit } {
  if (unit === undefined) return stated(min, max);
  if (min === undefined) return max === undefined ? { unit } : { max, unit };
  return max === undefined ? { min, unit } : { min, max, unit };
}
