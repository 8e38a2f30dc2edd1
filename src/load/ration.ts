import { positive } from "../errors";
import type { Range } from "../ranges";

/** Energy for one fish at upkeep, kJ/d, is this × (mass in kg) ^ 0.80: Lupatsch et al. 2013, clownfish at 27 °C. */
const upkeep = 43.2;

/** Dry food holds about 20 kJ/g: mean of 73 studies 20.4, Licitra et al. 2024, Biology 13:209. */
const energyOfFood = 20;

/** The plenty that adult zebrafish of half a gram are kept on without breeding: 3 % of their mass a day. */
const plenty = { share: 0.03, mass: 0.5 } as const;

const scaled = (mass: number) => (mass / 1000) ** 0.8;

/**
 * Dry food for one grown fish that is kept and not fattened, in g a day: from what holds its mass to what adult
 * zebrafish in breeding-free upkeep are given. Frozen and live food weighs four to five times as much, for its water.
 * Young fish and breeders need several times as much; fish in cold water less.
 *
 * Source: upkeep by Lupatsch et al. 2013, Isr. J. Aquacult. 65.2013.917, mass exponent 0.80; the upper end: Humane
 * Endpoints (Utrecht University), zebrafish nutrition, brought to other masses with the same exponent. A neon tetra of
 * 0.17 g at upkeep took about 2 % of its mass (Sales & Janssens 2003; Pannevis & Earle 1994), which lies between.
 *
 * @param fish - `mass` of one animal, g.
 * @throws InvalidInputError if the mass is not above zero.
 *
 * @example
 * ```ts
 * import { ration } from "vivary/load";
 *
 * ration({ mass: 0.5 }).max; // => 0.015
 * ```
 */
export function ration({ mass }: { readonly mass: number }): Range {
  const grams = positive(mass, "mass");
  const most = plenty.share * plenty.mass;
  return {
    min: (upkeep * scaled(grams)) / energyOfFood,
    max: (most * scaled(grams)) / scaled(plenty.mass),
  };
}
