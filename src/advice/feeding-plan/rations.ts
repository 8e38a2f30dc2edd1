import { inDomain } from "../../checks";
import { grownLength, grownPreyLength, isShorterThanGrown } from "../../compatibility/inner";
import { bodyMass, nitrogenLoad, nitrogenLoadDomain, ration } from "../../load";
import type { Plan } from "../../plan";
import { type CheckedParty, checkedPlan } from "../../plan/inner";
import type { Range } from "../../ranges";
import { factAt } from "../../species";

/** What is known of the amount that a group eats. */
export interface Rationed {
  /** Dry food for the whole group, g a day, over all its offerings, from upkeep to plenty; absent where nobody can tell. */
  readonly ration?: Range;
  /**
   * Some have still to grow: young, or fish said to be shorter than nine tenths of the usual length of the smallest of
   * their sex. Then no ration is told.
   */
  readonly growing?: true;
}

/** What every group of a plan eats as long as its animals are. */
export function rationsOf(plan: Plan): readonly Rationed[] {
  const { parties } = checkedPlan(plan);
  return parties.map((party, index) => {
    const { juveniles = 0 } = plan.groups[index] ?? {};
    if (juveniles > 0 || isShort(party)) return { growing: true };
    const { length } = party.animals;
    const lengths = length === undefined ? grownLengths(party) : { min: length, max: length };
    const found = lengths && rationAt(lengths, party, plan);
    return found ? { ration: found } : {};
  });
}

/** The same once all are grown, as the rules reckon what the filter has to take up; undefined where nobody can tell. */
export const grownRationsOf = (plan: Plan): readonly (Range | undefined)[] =>
  checkedPlan(plan).parties.map((party) => {
    const lengths = grownLengths(party);
    return lengths && rationAt(lengths, party, plan);
  });

/** Whether fish are said to be shorter than grown ones of their kind, as far as anybody knows how long these are. */
function isShort({ animals, species }: CheckedParty): boolean {
  const adult = factAt(species, "size.adultLength")?.value;
  return animals.kind === "fish" && adult !== undefined && isShorterThanGrown(animals, adult);
}

/** Total lengths in cm of the smallest and the largest once grown; undefined where nobody knows. */
function grownLengths({ animals, species }: CheckedParty): Range | undefined {
  const adult = factAt(species, "size.adultLength")?.value;
  if (!adult) return undefined;
  const { length: now = 0 } = animals;
  return { min: Math.max(now, grownPreyLength(animals, adult)), max: grownLength(animals, adult) };
}

/** For the lightest and the heaviest that fish of these lengths may be; undefined where no mass is known. */
function rationAt(lengths: Range, party: CheckedParty, { water }: Plan): Range | undefined {
  const masses = massesAt(lengths, party);
  if (!masses) return undefined;
  const temperature = water?.temperature;
  const { count = 0 } = party.animals;
  const each = (mass: number) => ration({ mass, temperature });
  const least = temperature !== undefined && temperature < torpid ? 0 : each(masses.min).min;
  return { min: count * least, max: count * each(masses.max).max };
}

/** Below this temperature, °C, fish hardly eat, if at all: common practice, no source. */
const torpid = 10;

/** What one fish weighs, g; undefined for other animals and for rays. */
function massesAt({ min, max }: Range, { animals, species }: CheckedParty): Range | undefined {
  if (animals.kind !== "fish") return undefined;
  const shape = factAt(species, "size.bodyShape")?.value;
  const lengthWeight = factAt(species, "size.lengthWeight")?.value;
  const isDisc = factAt(species, "size.adultLength")?.value.some(({ measure }) => measure === "disc");
  if (!lengthWeight && isDisc) return undefined;
  const likely = (length: number) => bodyMass({ length, shape, lengthWeight }).likely;
  return { min: likely(min).min, max: likely(max).max };
}

/** The sum of what is known. */
export const totalOf = (rations: readonly (Range | undefined)[]): Range =>
  rations.reduce<Range>((sum, one) => ({ min: sum.min + (one?.min ?? 0), max: sum.max + (one?.max ?? 0) }), {
    min: 0,
    max: 0,
  });

/** Ammonia nitrogen that comes of so much dry food for all groups, mg a day. */
export function nitrogenOf({ min, max }: Range): Range {
  inDomain(max, "the food of all groups together", nitrogenLoadDomain.food, "g/d");
  return { min: nitrogenLoad({ food: min }), max: nitrogenLoad({ food: max }) };
}
