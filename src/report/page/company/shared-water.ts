import { overlap, type PartialRange, width } from "../../../ranges";
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

/** Whether water could hardly suit both better. */
export const isPlenty = (one: SpeciesProfile, other: SpeciesProfile): boolean => breadth(one, other) >= 1;
