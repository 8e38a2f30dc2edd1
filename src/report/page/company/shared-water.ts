import { jaccard, overlap, type PartialRange, width } from "../../../ranges";
import { factAt, type SpeciesProfile } from "../../../species";

/** How much of each figure two have to share until it is as good as all: K, pH and °dH. Common practice. */
const plenty = { "water.temperature": 4, "water.pH": 1, "water.generalHardness": 6 } as const;

const paths = /* @__PURE__ */ Object.keys(plenty) as readonly (keyof typeof plenty)[];

/** The temperature that two are both kept at. */
export const sharedTemperature = (one: SpeciesProfile, other: SpeciesProfile): PartialRange | undefined =>
  sharedAt("water.temperature", one, other);

function sharedAt(
  path: keyof typeof plenty,
  one: SpeciesProfile,
  other: SpeciesProfile,
): PartialRange | undefined {
  const [mine, theirs] = [factAt(one, path)?.value.kept, factAt(other, path)?.value.kept];
  return mine && theirs && overlap(mine, theirs);
}

/** How broad the water is that suits both, from 0, a mere point, to 1, plenty: the least over temperature, pH and hardness. */
export function breadth(one: SpeciesProfile, other: SpeciesProfile): number {
  return Math.min(
    1,
    ...paths.map((path) => {
      if (!factAt(one, path) || !factAt(other, path)) return 0.5;
      const shared = sharedAt(path, one, other);
      return shared ? (width(shared) ?? plenty[path]) / plenty[path] : 0;
    }),
  );
}

/** The share of it that two have to share to be company of choice: hardly any water for both is none. Common practice. */
const leastShare = 2 / 3;

/**
 * Whether two share most of what would be plenty, or of what the first is kept in where that is less, and most of the
 * temperature that is best for the first.
 */
export const shareMostWater = (one: SpeciesProfile, other: SpeciesProfile): boolean =>
  breadth(one, other) >= leastShare * breadth(one, one) && sharesItsBest(one, other);

function sharesItsBest(one: SpeciesProfile, other: SpeciesProfile): boolean {
  const { optimum } = factAt(one, "water.temperature")?.value ?? {};
  const { kept } = factAt(other, "water.temperature")?.value ?? {};
  if (!optimum || !kept) return true;
  const shared = overlap(optimum, kept);
  return shared !== undefined && (width(shared) ?? 0) >= leastShare * (width(optimum) ?? 0);
}

/**
 * How alike the waters are that two are kept in, from 0 to 1: what they share of all that either is kept in, the mean over
 * temperature, pH and hardness.
 */
export function likeness(one: SpeciesProfile, other: SpeciesProfile): number {
  const shares = paths.map((path) => {
    const [mine, theirs] = [factAt(one, path)?.value.kept, factAt(other, path)?.value.kept];
    return (mine && theirs && jaccard(mine, theirs)) ?? 0;
  });
  return shares.reduce((sum, share) => sum + share, 0) / shares.length;
}

/** Whether water could hardly suit both better. */
export const isPlenty = (one: SpeciesProfile, other: SpeciesProfile): boolean => breadth(one, other) >= 1;
