import { decimal } from "../../decimal";
import { onceOfEach, onceOfEachObject } from "../../later";
import { bodyMass, nitrogenLoad, oxygenDemand, ration } from "../../load";
import type { TraitPath } from "../../species";
import { type Counted, type Estimate, numbersWanted, orUnknown } from "./crowd";
import { grownLength } from "./lengths";
import { wantedBy } from "./wanted";

/** The fish of a plan, grown, by mass: at what they likely weigh, or at one end of it. */
export interface Stock {
  readonly end: Estimate;
  readonly animals: readonly Weighed[];
}

/** Some fish of one mass. */
export interface Weighed {
  /** Of one animal, g. */
  readonly mass: number;
  /** How many. */
  readonly count: number;
}

/** Without these traits animals cannot be weighed. */
export const weighedBy: readonly TraitPath[] = ["size.adultLength"];

/** A trait by which animals are weighed. */
interface WeighedTrait<Weighed> {
  readonly subject: Weighed;
  readonly trait: TraitPath;
}

/**
 * The traits by which animals are weighed: the length, and the shape where the species' own weights are not known; and
 * those that say how many of them are wanted.
 * Trait by trait, so that they stand in one order in whatever order the animals do.
 */
export function traitsWeighed<Each extends Counted>(groups: readonly Each[]): readonly WeighedTrait<Each>[] {
  const by = (trait: TraitPath, animals: readonly Each[]) => animals.map((subject) => ({ subject, trait }));
  return [
    ...by("size.adultLength", groups),
    ...by(
      "size.lengthWeight",
      groups.filter(({ standing }) => isMeasured(standing)),
    ),
    ...by(
      "size.bodyShape",
      groups.filter(({ standing }) => !isMeasured(standing)),
    ),
    ...wantedBy.flatMap((trait) => by(trait, groups.filter(isFish))),
  ];
}

const isFish = ({ animals }: Counted) => animals.kind === "fish";

const isMeasured = (standing: Counted["standing"]) => standing("size.lengthWeight").length > 0;

/** The likely stock first, then the lightest and the heaviest it may be, by every length and shape that may be true. */
export function stocksOf(groups: readonly Counted[]): readonly Stock[] {
  const fish = groups.filter(isFish).map((group) => ({ counts: countsOf(group), masses: massesOf(group) }));
  return (["likely", "least", "greatest"] as const).map((end) => ({
    end,
    animals: fish.map(({ counts, masses }) => ({ mass: masses[end], count: counts[end] })),
  }));
}

/** How many there are of a group once there are as many of its species as belong together: its share of them. */
function countsOf(group: Counted): Readonly<Record<Estimate, number>> {
  const { count = 1, kin } = group.animals;
  const wanted = numbersWanted(group);
  const share = (end: Estimate) => Math.ceil((count * wanted[end]) / (kin.count ?? 1));
  return { likely: share("likely"), least: share("least"), greatest: share("greatest") };
}

/** Nothing on the scales. */
export const noStock: Stock = { end: "likely", animals: [] };

/** Oxygen that a stock uses through a warm night, mg/h: as fish go about in a group; at least at rest. */
export const oxygenDemandOf = (stock: Stock, temperature: number): number => demandsOf(stock)(temperature);

/** By temperature, since it is asked for each group of a plan. */
const demandsOf = /* @__PURE__ */ onceOfEachObject((stock: Stock) =>
  onceOfEach((temperature: number) => demandOf(stock, temperature)),
);

function demandOf({ end, animals }: Stock, temperature: number): number {
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
function massesOf({ animals, standing }: Counted): Readonly<Record<Estimate, number>> {
  const lengths = standing("size.adultLength").map((adult) => grownLength(animals, adult));
  const bodies = isMeasured(standing)
    ? standing("size.lengthWeight").map((lengthWeight) => ({ lengthWeight }))
    : shapesOf(standing).map((shape) => ({ shape }));
  const masses = lengths.flatMap((length) => bodies.map((body) => bodyMass({ length, ...body })));
  return {
    likely: masses[0]?.typical ?? 0,
    least: Math.min(...masses.map(({ likely }) => likely.min)),
    greatest: Math.max(...masses.map(({ likely }) => likely.max)),
  };
}

const shapesOf = (standing: Counted["standing"]) => orUnknown(standing("size.bodyShape"));
