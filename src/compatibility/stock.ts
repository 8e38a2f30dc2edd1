import { decimal } from "../decimal";
import { bodyMass, nitrogenLoad, oxygenDemand, ration } from "../load";
import type { AdultLength, TraitValue as Value } from "../species";
import { roomLength } from "./rules/shared/total-length";
import type { Subject } from "./subject";

/** The fish of a plan, grown, by mass: at what they likely weigh, or at one end of it. */
export interface Stock {
  readonly end: "likely" | "least" | "greatest";
  readonly animals: readonly Weighed[];
}

/** Some fish of one mass. */
export interface Weighed {
  /** Of one animal, g. */
  readonly mass: number;
  readonly count: number;
}

const empty: readonly Stock[] = [{ end: "likely", animals: [] }];

/** The likely stock first, then the lightest and the heaviest it may be, by every length and shape that may be true. */
export function stocksOf(groups: readonly Subject[]): readonly Stock[] {
  if (groups.length === 0) return empty;
  const fish = groups
    .filter(({ party }) => party.species.taxonomy.kind === "fish")
    .map((group) => ({ count: group.party.count ?? 1, masses: massesOf(group) }));
  return (["likely", "least", "greatest"] as const).map((end) => ({
    end,
    animals: fish.map(({ count, masses }) => ({ mass: masses[end], count })),
  }));
}

/** Oxygen that a stock uses through a warm night, mg/h: as fish go about in a group; at least at rest. */
export function oxygenDemandOf({ end, animals }: Stock, temperature: number): number {
  const each = (mass: number) => {
    const { resting, routine } = oxygenDemand({ mass, temperature });
    return end === "least" ? resting : routine;
  };
  return totalOf(animals, each);
}

/** Ammonia nitrogen that a stock gives off, mg/d: fed plenty; at least fed for upkeep. */
export function nitrogenOf({ end, animals }: Stock): number {
  const each = (mass: number) => nitrogenLoad({ food: ration({ mass })[end === "least" ? "min" : "max"] });
  return totalOf(animals, each);
}

/** A sum over all animals, the same in whatever order they stand. */
function totalOf(animals: readonly Weighed[], each: (mass: number) => number): number {
  return decimal(animals.reduce((sum, { mass, count }) => sum + count * each(mass), 0));
}

/** What one fish of a group weighs in g, by the adopted facts and at the ends of what may be true. */
function massesOf(group: Subject): Readonly<Record<Stock["end"], number>> {
  const lengths = standing<readonly AdultLength[]>(group, "size.adultLength").flatMap((adult) =>
    adult ? [roomLength(group.party, adult)] : [],
  );
  const weights = standing<Value<"size.lengthWeight">>(group, "size.lengthWeight");
  const shapes = standing<Value<"size.bodyShape">>(group, "size.bodyShape");
  const bodies = weights.some(Boolean)
    ? weights.map((lengthWeight) => ({ lengthWeight }))
    : shapes.map((shape) => ({ shape }));
  const masses = lengths.flatMap((length) => bodies.map((body) => bodyMass({ length, ...body })));
  return {
    likely: masses[0]?.typical ?? 0,
    least: Math.min(...masses.map(({ likely }) => likely.min)),
    greatest: Math.max(...masses.map(({ likely }) => likely.max)),
  };
}

/** The values of a trait that a source supports, the adopted one first. */
function standing<Held>({ facts, disputed }: Subject, path: Parameters<Subject["facts"]["get"]>[0]) {
  return (disputed.get(path) ?? [facts.get(path)?.value]) as readonly (Held | undefined)[];
}
