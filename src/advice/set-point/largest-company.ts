import type { Ends } from "../../compatibility/inner";
import { decimal } from "../../decimal";

/** Some animals, each of which bears some water, as boxes. */
export interface Boxes {
  /** What each can be given, by animal, then by axis; open at both ends where nobody knows. */
  readonly spans: readonly (readonly Ends[])[];
  /** How wide a span must be on each axis to be shared. */
  readonly least: readonly number[];
  /** Two of these animals that cannot stay together though they share water; undefined where all can. */
  readonly apart: (members: readonly number[]) => readonly number[] | undefined;
  /** Whether some water that these animals share is bearable. */
  readonly isBearable: (members: readonly number[]) => boolean;
}

/**
 * The largest company whose boxes share water, by its places; of equally large ones that of the earliest animals. What
 * boxes share begins at one of their lower ends, so that only these are tried, axis by axis, and a branch is left where
 * fewer are in it than were found; of two that cannot stay together one or the other leaves. Exact, in steps that are at most
 * the product of the numbers of different lower ends, and twice as many for each two that are apart.
 */
export function largestCompany({ spans, least, apart, isBearable }: Boxes): readonly number[] {
  let best: readonly number[] = [];
  const search = (members: readonly number[], axis: number) => {
    if (!isBetter(members, best)) return;
    const narrowest = least[axis];
    if (narrowest !== undefined) {
      const spanOf = (member: number) => spans[member]?.[axis] ?? open;
      for (const holding of sharing(members, spanOf, narrowest)) search(holding, axis + 1);
      return;
    }
    const two = apart(members);
    for (const leaving of two ?? []) search(withoutOne(members, leaving), axis);
    if (!two && isBearable(members)) best = members;
  };
  search([...spans.keys()], 0);
  return best;
}

const withoutOne = (members: readonly number[], leaving: number) =>
  members.filter((member) => member !== leaving);

const open: Ends = { min: -Infinity, max: Infinity };

/** Who shares a span from each lower end on; and one by one, beside those of whom nobody knows, who has too narrow a span to share. */
function sharing(
  members: readonly number[],
  spanOf: (member: number) => Ends,
  narrowest: number,
): readonly (readonly number[])[] {
  const lowerEnds = [...new Set(members.map((member) => spanOf(member).min))];
  const upperEnds = new Map(lowerEnds.map((min) => [min, decimal(min + narrowest)]));
  const holds = (member: number, min: number) =>
    spanOf(member).min <= min && (upperEnds.get(min) ?? min) <= spanOf(member).max;
  const isNarrow = (member: number) => !holds(member, spanOf(member).min);
  const alone = members
    .filter(isNarrow)
    .map((one) => members.filter((member) => member === one || spanOf(member).min === open.min));
  return [...lowerEnds.map((min) => members.filter((member) => holds(member, min))), ...alone];
}

/** Whether some animals are more than others, or as many and earlier. */
function isBetter(some: readonly number[], others: readonly number[]): boolean {
  if (some.length !== others.length) return some.length > others.length;
  const differing = some.findIndex((place, index) => place !== others[index]);
  return differing >= 0 && (some[differing] ?? 0) < (others[differing] ?? 0);
}
