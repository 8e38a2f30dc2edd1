import { inDomain, objectOf, positive, refuseOthers } from "../checks";
import type { Range } from "../ranges";
import { oxygenDemand, oxygenDemandDomain } from "./oxygen-demand";

/** What a day's food is reckoned from. */
export interface RationInput {
  /** Mass of one animal, g. */
  readonly mass: number;
  /** Of the water, °C. Default 27, at which the upkeep was measured. */
  readonly temperature?: number | undefined;
}

/** Energy for one fish at upkeep, kJ/d, is this × (mass in kg) ^ 0.80: Lupatsch et al. 2013, clownfish. */
const upkeep = 43.2;

/** The temperature of those clownfish, °C. */
const measuredAt = 27;

/** Dry food holds about 20 kJ/g: mean of 73 studies 20.4, Licitra et al. 2024, Biology 13:209. */
const energyOfFood = 20;

/** The plenty that adult zebrafish of half a gram are kept on without breeding: 3 % of their mass a day. */
const plenty = { share: 0.03, mass: 0.5 } as const;

const scaled = (mass: number) => (mass / 1000) ** 0.8;

/** By what upkeep at one temperature exceeds that of the clownfish: as the use of oxygen at rest does. */
function warmth(temperature: number): number {
  const resting = (at: number) => oxygenDemand({ mass: 1, temperature: at }).resting;
  return resting(temperature) / resting(measuredAt);
}

/**
 * Dry food for one grown fish that is kept and not fattened, in g a day: from what holds its mass to what adult
 * zebrafish in breeding-free upkeep are given. Frozen and live food weighs four to five times as much, for its water
 * (common practice, no source).
 * Young fish and breeders need several times as much: 5 to 6 % of the mass a day in trials with zebrafish (Lawrence et
 * al. 2012) and freshwater angelfish (Ribeiro et al. 2012). Upkeep falls and rises with the temperature; the upper end
 * falls with it in cooler water, where what is not eaten rots, and does not rise (common practice, no source). It stays
 * above upkeep for every mass from 0 to 40 °C. Below some 10 °C fish of warmer water, carp and goldfish among them, hardly
 * eat: then nothing is better than leftovers (common practice, no source).
 *
 * Source: upkeep by Lupatsch et al. 2013, Isr. J. Aquacult. 65.2013.917, mass exponent 0.80, brought to other
 * temperatures by Clarke & Johnston 1999 (see {@link oxygenDemand}); the upper end: Humane Endpoints (Utrecht
 * University), zebrafish nutrition, brought to other masses with the same exponent. Species differ: a
 * neon tetra of 0.17 g at upkeep took about 2 % of its mass, 1.7 times the lower end (Sales & Janssens 2003; Pannevis &
 * Earle 1994).
 *
 * @throws InvalidInputError if the mass is not above zero, or a number is missing or not finite; for any other field.
 * @throws OutsideDomainError outside {@link oxygenDemandDomain}: 0 to 40 °C, and more than any fish weighs.
 *
 * @example
 * ```ts
 * import { ration } from "vivary/load";
 *
 * ration({ mass: 0.5 }).max; // => 0.015
 * ration({ mass: 0.5 }).min; // ≈ 0.00494
 * ration({ mass: 0.5, temperature: 18 }).min; // ≈ 0.00295
 * ration({ mass: 0 }); // throws
 * ```
 */
export function ration(fish: RationInput): Range {
  const { mass, temperature = measuredAt, ...others } = objectOf(fish, "");
  refuseOthers(others, "");
  const grams = inDomain(positive(mass, "mass"), "mass", oxygenDemandDomain.mass, "g");
  const most = plenty.share * plenty.mass;
  const rise = warmth(temperature);
  return {
    min: ((upkeep * scaled(grams)) / energyOfFood) * rise,
    max: ((most * scaled(grams)) / scaled(plenty.mass)) * Math.min(1, rise),
  };
}
