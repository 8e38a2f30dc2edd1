import type { Ends } from "./ends";

/** Some animals as boxes: on each axis, where the lower end of a span that is just held may lie. */
export interface Boxes {
  /** By animal, then by axis. */
  readonly spans: readonly (readonly Ends[])[];
  /** Whether the water whose spans begin at this corner is bearable for these animals. */
  readonly isBearable: (corner: readonly number[], members: readonly number[]) => boolean;
}

/**
 * The largest company whose boxes share a corner, by its places; of equally large ones that of the earliest animals. A
 * box holds a corner that others hold if and only if it holds the one made of the lower ends of theirs, so that only lower
 * ends are tried, axis by axis, and a branch is left where fewer are in it than were found: exact, in steps that are at
 * most the product of the numbers of different lower ends.
 */
export function largestCompany({ spans, isBearable }: Boxes): readonly number[] {
  const axes = spans[0]?.length ?? 0;
  let best: readonly number[] = [];
  const search = (members: readonly number[], corner: readonly number[]) => {
    if (!isBetter(members, best)) return;
    const axis = corner.length;
    if (axis === axes) {
      if (isBearable(corner, members)) best = members;
      return;
    }
    const endsOf = (member: number) => spans[member]?.[axis] ?? { min: 0, max: 0 };
    for (const end of new Set(members.map((member) => endsOf(member).min))) {
      const holding = members.filter((member) => endsOf(member).min <= end && end <= endsOf(member).max);
      search(holding, [...corner, end]);
    }
  };
  search([...spans.keys()], []);
  return best;
}

/** Whether some animals are more than others, or as many and earlier. */
function isBetter(some: readonly number[], others: readonly number[]): boolean {
  if (some.length !== others.length) return some.length > others.length;
  const differing = some.findIndex((place, index) => place !== others[index]);
  return differing >= 0 && (some[differing] ?? 0) < (others[differing] ?? 0);
}
