import { inDomain } from "../../checks";
import { bodyMass, nitrogenLoad, nitrogenLoadDomain, ration } from "../../load";
import type { Animals, Group, Plan } from "../../plan";
import { type CheckedPlan, checkedPlan } from "../../plan/inner";
import type { Range } from "../../ranges";
import { factAt, type TraitValue } from "../../species";
import { lengthsMeant, lengthsOfSex } from "../../species/inner";

/** What every group of a plan eats, dry, g a day, from upkeep to plenty; undefined where nobody can tell. */
export function rationsOf(plan: Plan): readonly (Range | undefined)[] {
  const { parties } = checkedPlan(plan);
  return plan.groups.map((group, index) => rationOf(group, parties[index], plan.water?.temperature));
}

/** For the lightest and the heaviest that grown fish of the group may be. */
function rationOf(
  { juveniles = 0 }: Group,
  party: CheckedPlan["parties"][number] | undefined,
  temperature: number | undefined,
): Range | undefined {
  const masses = party && massesOf(party);
  if (!masses || juveniles > 0) return undefined;
  const { count = 0 } = party.animals;
  const each = (mass: number) => ration({ mass, temperature });
  const least = temperature !== undefined && temperature < torpid ? 0 : each(masses.min).min;
  return { min: count * least, max: count * each(masses.max).max };
}

/** Below this temperature, °C, fish hardly eat, if at all: common practice, no source. */
const torpid = 10;

/** What one grown fish weighs, g; undefined for other animals, for rays, and where nobody knows its length. */
function massesOf({ animals, species }: CheckedPlan["parties"][number]): Range | undefined {
  const adult = factAt(species, "size.adultLength")?.value;
  const lengths = lengthsOf(animals, adult);
  if (animals.kind !== "fish" || lengths.length === 0) return undefined;
  const shape = factAt(species, "size.bodyShape")?.value;
  const lengthWeight = factAt(species, "size.lengthWeight")?.value;
  if (!lengthWeight && adult?.some(({ measure }) => measure === "disc")) return undefined;
  const likely = (length: number) => bodyMass({ length, shape, lengthWeight }).likely;
  return {
    min: Math.min(...lengths.map(({ min }) => likely(min).min)),
    max: Math.max(...lengths.map(({ max }) => likely(max).max)),
  };
}

/**
 * The total lengths in cm that they may have: the one that is said, else the usual ones of their sex; none where nobody
 * knows.
 */
function lengthsOf(
  { length, sex }: Animals,
  adult: TraitValue<"size.adultLength"> | undefined,
): readonly Range[] {
  if (length !== undefined) return [{ min: length, max: length }];
  return adult ? lengthsMeant(lengthsOfSex(adult, sex), "usual").map(({ total }) => total) : [];
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
