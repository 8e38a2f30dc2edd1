import type { Measure as Definition } from "convert-units";

/**
 * A measure whose units are multiples of one anchor. The anchors are small enough to make legal definitions
 * whole numbers, so that no factor is rounded.
 */
export function multiples<U extends string>(
  factors: Readonly<Record<U, number>>,
): Definition<string, string> {
  const units = Object.entries<number>(factors).map(([id, factor]) => [
    id,
    { name: { singular: id, plural: id }, to_anchor: factor },
  ]);
  return { systems: { all: Object.fromEntries(units) } };
}
