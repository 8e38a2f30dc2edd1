import { decimal } from "../../decimal";
import { bodyMass, nitrogenLoad, oxygenDemand, ration } from "../../load";
import type { Animals } from "../../plan";
import type { TraitPath, TraitValue } from "../../species";
import { grownLength } from "./lengths";
import { wantedBy, wantedKin } from "./wanted";

/** The fish of a plan, grown, by mass: at what they likely weigh, or at one end of it. */
export interface Stock {
  readonly end: "likely" | "least" | "greatest";
  readonly animals: readonly Weighed[];
}

/** Some fish of one mass. */
export interface Weighed {
  /** Of one animal, g. */
  readonly mass: number;
  /** How many. */
  readonly count: number;
}

/** Animals that are put on the scales. */
export interface OnScales {
  readonly animals: Animals;
  /** The values of a trait that a source supports, the adopted one first; none where it is unknown. */
  readonly standing: <Path extends TraitPath>(path: Path) => readonly TraitValue<Path>[];
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
export function traitsWeighed<Each extends OnScales>(groups: readonly Each[]): readonly WeighedTrait<Each>[] {
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

const isFish = ({ animals }: OnScales) => animals.kind === "fish";

const isMeasured = (standing: OnScales["standing"]) => standing("size.lengthWeight").length > 0;

/** The likely stock first, then the lightest and the heaviest it may be, by every length and shape that may be true. */
export function stocksOf(groups: readonly OnScales[]): readonly Stock[] {
  const fish = groups.filter(isFish).map((group) => ({ counts: wantedOf(group), masses: massesOf(group) }));
  return (["likely", "least", "greatest"] as const).map((end) => ({
    end,
    animals: fish.map(({ counts, masses }) => ({ mass: masses[end], count: counts[end] })),
  }));
}

/**
 * How many there are of a group once there are as many of its species as belong together: by the adopted facts, and at
 * the ends of what may be true.
 */
function wantedOf({ animals, standing }: OnScales): Readonly<Record<Stock["end"], number>> {
  const { count = 1, kin } = animals;
  const each = <Path extends TraitPath>(path: Path) => orUnknown(standing(path));
  const counts = each("social.living").flatMap((living) =>
    each("social.group").flatMap((group) =>
      each("social.femalesPerMale").map((ratio) => {
        const wanted = wantedKin({
          party: { kin },
          ...(living && { "social.living": living }),
          ...(group && { "social.group": group }),
          ...(ratio !== undefined && { "social.femalesPerMale": ratio }),
        });
        return Math.ceil((count * (wanted.count ?? 1)) / (kin.count ?? 1));
      }),
    ),
  );
  return { likely: counts[0] ?? count, least: Math.min(...counts), greatest: Math.max(...counts) };
}

const orUnknown = <Value>(values: readonly Value[]): readonly (Value | undefined)[] =>
  values.length > 0 ? values : [undefined];

/** Nothing on the scales. */
export const noStock: Stock = { end: "likely", animals: [] };

/** Oxygen that a stock uses through a warm night, mg/h: as fish go about in a group; at least at rest. */
export function oxygenDemandOf(stock: Stock, temperature: number): number {
  const known = demands.get(stock) ?? new Map<number, number>();
  demands.set(stock, known);
  const demand = known.get(temperature) ?? demandOf(stock, temperature);
  known.set(temperature, demand);
  return demand;
}

/** By temperature, since it is asked for each group of a plan. */
const demands = /* @__PURE__ */ new WeakMap<Stock, Map<number, number>>();

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
function massesOf({ animals, standing }: OnScales): Readonly<Record<Stock["end"], number>> {
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

const shapesOf = (standing: OnScales["standing"]) => orUnknown(standing("size.bodyShape"));
