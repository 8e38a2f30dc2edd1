import { bodyMass } from "vivary/load";
import type { SpeciesProfile } from "vivary/species";
import type { Contradiction } from "./contradiction";

/** How large, heavy and old it grows. */
export const ofSize: readonly Contradiction[] = [
  {
    trait: "size.lifespan",
    found: "an age that no animal of its length reaches",
    expected: "years, not months or days",
    holds: ({ size }) => {
      const { greatest, usual } = size?.lifespan?.value ?? {};
      const lengths = (size?.adultLength?.value ?? []).map(({ total }) => total.max);
      return (greatest ?? usual ?? 0) > yearsOfRoot * Math.sqrt(Math.max(...lengths));
    },
    mend: 'Correct size.lifespan; the year is "a", the day "d".',
  },
  {
    trait: "size.lifespan",
    found: "a usual age above the greatest",
    expected: "a usual age no greater than the greatest on record",
    holds: ({ size }) => (size?.lifespan?.value.usual ?? 0) > (size?.lifespan?.value.greatest ?? Infinity),
    mend: "Correct the figure or its unit, or set one of the two aside and say why.",
  },
  {
    trait: "size.grownAt",
    found: "an animal that is grown when it has died",
    expected: "an age when grown within size.lifespan",
    holds: ({ size }) => (size?.grownAt?.value ?? 0) > monthsOfLife(size),
    mend: 'Correct size.grownAt or size.lifespan, or name the unit: the month is "mo", the year "a".',
  },
  {
    trait: "reproduction.breedsFrom",
    found: "an animal that breeds only when half its life is over",
    expected: "a youngest age of breeding within the first half of size.lifespan",
    holds: ({ size, reproduction }) => (reproduction?.breedsFrom?.value ?? 0) > monthsOfLife(size) / 2,
    mend: 'Correct reproduction.breedsFrom or size.lifespan, or name the unit: the month is "mo", the year "a".',
  },
  {
    trait: "size.lengthWeight",
    found: "a mass of more than five times that of fish of its shape, or less than a fifth",
    expected: "a and b for mass in g of a total length in cm",
    holds: ({ size }) => {
      const [lengthWeight, shape] = [size?.lengthWeight?.value, size?.bodyShape?.value];
      const length = Math.max(...(size?.adultLength?.value ?? []).map(({ total }) => total.max));
      if (lengthWeight === undefined || shape === undefined || !(length > 0)) return false;
      const times = bodyMass({ length, lengthWeight }).typical / bodyMass({ length, shape }).typical;
      return times > 5 || times < 1 / 5;
    },
    mend: "Look for a decimal point that was lost, for mm or kg, or for another outline in size.bodyShape.",
  },
];

/** The months that an animal lives: to the greatest age on record, else to the usual one. */
function monthsOfLife(size: SpeciesProfile["size"]): number {
  const { greatest, usual } = size?.lifespan?.value ?? {};
  return 12 * (greatest ?? usual ?? Number.NaN);
}

/** An age in years over the root of a length in cm that none here reaches; goldfish come nearest. */
const yearsOfRoot = 6.5;
