import { listOf, notNegative, objectOf, refuseOthers } from "../checks";
import { refusal } from "../errors";

/** What stays the sum of its parts when waters are mixed. */
export interface Dissolved {
  /** °dH. */
  readonly generalHardness?: number | undefined;
  /** °dH: the alkalinity. */
  readonly carbonateHardness?: number | undefined;
  /** As NO3, mg/L. */
  readonly nitrate?: number | undefined;
}

/** Some of a water. */
export interface PartOfMixture {
  /** How much of it, in any unit of volume. */
  readonly amount: number;
  /** What is known of it. */
  readonly water: Dissolved;
}

const dissolved = ["generalHardness", "carbonateHardness", "nitrate"] as const;

/**
 * The hardness, carbonate hardness and nitrate of mixed waters: the mean of the parts by volume, since what is dissolved
 * stays (alkalinity too is conserved in mixing: Stumm & Morgan 1996, Aquatic Chemistry, from memory). Exact to the
 * difference of densities, under a thousandth for fresh waters, as long as no lime falls out. A pH has no such mean: it
 * follows from carbonate hardness and carbon dioxide (see {@link carbonDioxide}), and is not told. Conductivity is no
 * mean either: salts lead less well the more of them there are.
 *
 * @returns What is known of every part that is there; what is unknown of one is left out.
 * @throws InvalidInputError for no parts, an amount or a figure that is not finite or below zero, or amounts of nothing;
 * for any other field.
 *
 * @example
 * ```ts
 * import { mixture } from "vivary/water";
 *
 * const tap = { generalHardness: 16, carbonateHardness: 12 };
 * const demineralised = { generalHardness: 0, carbonateHardness: 0 };
 * const mixed = mixture([{ amount: 3, water: tap }, { amount: 1, water: demineralised }]);
 * mixed; // => { generalHardness: 12, carbonateHardness: 9 }
 * ```
 */
export function mixture(parts: readonly PartOfMixture[]): Dissolved {
  const checked = listOf(parts, "parts").map(checkedPart);
  const whole = checked.reduce((sum, { amount }) => sum + amount, 0);
  if (whole <= 0 || whole === Number.POSITIVE_INFINITY)
    throw refusal("parts", "some amount of water, and less than 1.8e308", parts, "range");
  const there = checked.filter(({ amount }) => amount > 0);
  return Object.fromEntries(
    dissolved.flatMap((name) => {
      const figures = there.map(({ water, amount }) => (water[name] ?? Number.NaN) * (amount / whole));
      const mean = figures.reduce((sum, figure) => sum + figure, 0);
      return Number.isNaN(mean) ? [] : [[name, mean]];
    }),
  );
}

function checkedPart(part: PartOfMixture, index: number): PartOfMixture {
  const subject = `parts[${index}]`;
  const { amount, water, ...others } = objectOf(part, subject);
  refuseOthers(others, subject);
  notNegative(amount, `${subject}.amount`);
  checkDissolved(water, `${subject}.water`);
  return part;
}

/** Refuses what is no water, a figure that is no number from 0 on, and a figure of something else. */
export function checkDissolved(water: Dissolved, subject: string): void {
  const { generalHardness, carbonateHardness, nitrate, ...others } = objectOf(water, subject);
  refuseOthers(others, subject);
  for (const [name, figure] of Object.entries({ generalHardness, carbonateHardness, nitrate }))
    if (figure !== undefined) notNegative(figure, `${subject}.${name}`);
}
