import { decimal } from "../../decimal";
import { bodyMass, nitrogenLoad, oxygenDemand, ration } from "../../load";
import { onceOfEach, onceOfEachObject } from "../../made-once";
import type { TraitPath } from "../../species";
import { numbersWanted } from "./crowd";
import { grownLength } from "./lengths";
import { type Estimate, orUnknown, type Summed, type Summing } from "./summing";
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

/** Weighs the fish of a plan, by every length and shape that may be true, for rules whose `sums` it is. */
export const weighing: Summing<"stock", Stock> = {
  name: "stock",
  needs: ["size.adultLength"],
  /** The length, and the shape where the species' own weights are not known; and what says how many of them are wanted. */
  restsOn: (groups) => {
    const by = (trait: TraitPath, some: typeof groups) => some.map((group) => ({ group, trait }));
    return [
      ...by("size.adultLength", groups),
      ...by("size.lengthWeight", groups.filter(isMeasured)),
      ...by(
        "size.bodyShape",
        groups.filter((group) => !isMeasured(group)),
      ),
      ...wantedBy.flatMap((trait) => by(trait, groups.filter(isFish))),
    ];
  },
  ends: (groups) => {
    const fish = groups.filter(isFish).map(weighed);
    return (["likely", "least", "greatest"] as const).map((end) => ({
      end,
      animals: fish.map(({ counts, masses }) => ({ mass: masses[end], count: counts[end] })),
    }));
  },
};

const isFish = ({ animals }: Summed) => animals.kind === "fish";

const isMeasured = ({ standing }: Summed) => standing("size.lengthWeight").length > 0;

/** The fish of a group by number and mass, weighed once. */
const weighed = /* @__PURE__ */ onceOfEachObject((group: Summed) => ({
  counts: countsOf(group),
  masses: massesOf(group),
}));

/** How many there are of a group once there are as many of its species as belong together: its share of them. */
function countsOf(group: Summed): Readonly<Record<Estimate, number>> {
  const { count = 1, kin } = group.animals;
  const wanted = numbersWanted(group);
  const share = (end: Estimate) => Math.ceil((count * wanted[end]) / (kin.count ?? 1));
  return { likely: share("likely"), least: share("least"), greatest: share("greatest") };
}

/** Nothing is weighed. */
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
function massesOf({ animals, standing }: Summed): Readonly<Record<Estimate, number>> {
  const lengths = standing("size.adultLength").map((adult) => grownLength(animals, adult));
  const bodies = isMeasured({ animals, standing })
    ? standing("size.lengthWeight").map((lengthWeight) => ({ lengthWeight }))
    : shapesOf(standing).map((shape) => ({ shape }));
  const masses = lengths.flatMap((length) => bodies.map((body) => bodyMass({ length, ...body })));
  return {
    likely: masses[0]?.typical ?? 0,
    least: Math.min(...masses.map(({ likely }) => likely.min)),
    greatest: Math.max(...masses.map(({ likely }) => likely.max)),
  };
}

const shapesOf = (standing: Summed["standing"]) => orUnknown(standing("size.bodyShape"));
