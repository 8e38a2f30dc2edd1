import { inDomain, objectOf, positive, refuseOthers } from "../checks";
import { frozen } from "../frozen";
import type { Range } from "../ranges";
import { kelvins } from "../units/inner";
import { within95 } from "./within-95";

/** What the oxygen use of a fish is reckoned from. */
export interface OxygenDemandInput {
  /** Mass of one animal, g. */
  readonly mass: number;
  /** Of the water, °C. */
  readonly temperature: number;
}

/** Oxygen that one fish uses, by what it does. */
export interface OxygenDemand {
  /** At rest, mg/h. */
  readonly resting: number;
  /** As it goes about in a group, mg/h. */
  readonly routine: number;
  /** At the most it uses of its own accord, mg/h. */
  readonly active: number;
  /** In which 95 of 100 species of fresh water lie, mg/h, by what they do; `active` of fishes that were made to swim. */
  readonly likely: {
    readonly resting: Range;
    readonly routine: Range;
    readonly active: Range;
  };
}

/**
 * Where {@link oxygenDemand} holds: its studies span about 40 °C, with polar fishes at 0 °C. The source names no masses;
 * whatever `bodyMass` gives is taken.
 */
export const oxygenDemandDomain = /* @__PURE__ */ frozen({
  /** g; above zero. */
  mass: { min: 0, max: 1e12 },
  /** °C. */
  temperature: { min: 0, max: 40 },
} as const);

/** Molar mass of O₂, mg/mmol. */
const oxygen = 31.998;

/**
 * Zebrafish of 0.43 to 0.55 g at 24 °C used 364 mg/(kg h) at rest, 560 going about in groups, and at most 1110 of their
 * own accord. Fed a twentieth of their mass a day, groups used at most 77 % of the way from rest to exhaustion (1223),
 * less than that 1110 (Lucas & Priede 1992, J. Fish Biol. 41:175-190, abstract).
 */
const factors = { routine: 560 / 364, active: 1110 / 364 } as const;

/**
 * How species differ from the line at rest: mean and standard deviation over species of ln (measured use / the line), as
 * worked out from FishBase's table of oxygen use (version 06/2018), fishes of 0.05 g and more in fresh water at 0 to
 * 40 °C without stress. Most of what FishBase calls standard lies below the line.
 */
const spreads = {
  /** 559 measurements of 47 species. */
  resting: { mean: -0.57, deviation: 0.5 },
  /** 1410 measurements of 90 species. */
  routine: { mean: -0.19, deviation: 0.62 },
  /** 654 measurements of 36 species. */
  active: { mean: 0.98, deviation: 0.69 },
} as const;

/**
 * Oxygen that one fish uses, in mg/h: at rest, as it goes about in a group, and at the most it uses of its own accord,
 * which covers the hours after a meal. Of a typical bony fish past the larva; `likely` tells how far species differ, within
 * which those of one species differ less. The figures themselves lie rather high, most fishes use less.
 * Air breathers take a part of it from the air. For a species at home at the temperature; one fish warmed beyond its own
 * uses more than the line says.
 *
 * Source: at rest by temperature and mass, Clarke & Johnston 1999, J. Anim. Ecol. 68:893-905 (ln mmol/h of a fish of
 * 50 g = 15.7 - 5020 / T, mass exponent 0.80; 69 species). The two factors: Lucas & Priede 1992 on zebrafish. The spread,
 * which the abstract of the line does not give: FishBase, version 06/2018, table of oxygen use.
 *
 * @throws OutsideDomainError outside {@link oxygenDemandDomain}.
 * @throws InvalidInputError if the mass is not above zero, or a number is missing or not finite; for any other field.
 *
 * @example
 * ```ts
 * import { oxygenDemand } from "vivary/load";
 *
 * oxygenDemand({ mass: 1, temperature: 25 }).resting; // ≈ 0.449
 * oxygenDemand({ mass: 1, temperature: 25 }).likely.resting.max; // ≈ 0.676
 * oxygenDemand({ mass: 1, temperature: 45 }); // throws
 * ```
 */
export function oxygenDemand(fish: OxygenDemandInput): OxygenDemand {
  const { mass, temperature, ...others } = objectOf(fish, "");
  refuseOthers(others, "");
  const grams = inDomain(positive(mass, "mass"), "mass", oxygenDemandDomain.mass, "g");
  const T = kelvins(inDomain(temperature, "temperature", oxygenDemandDomain.temperature, "degC"));
  const resting = Math.exp(15.7 - 5020 / T) * (grams / 50) ** 0.8 * oxygen;
  return {
    resting,
    routine: resting * factors.routine,
    active: resting * factors.active,
    likely: {
      resting: spanOf(resting, spreads.resting),
      routine: spanOf(resting, spreads.routine),
      active: spanOf(resting, spreads.active),
    },
  };
}

/** The span of 95 of 100 species about the line. */
const spanOf = (
  line: number,
  { mean, deviation }: { readonly mean: number; readonly deviation: number },
): Range => ({
  min: line * Math.exp(mean - within95 * deviation),
  max: line * Math.exp(mean + within95 * deviation),
});
