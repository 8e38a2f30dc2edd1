import { listOf, notNegative, objectOf, positive, refuseOthers } from "../../checks";
import { decimal } from "../../decimal";
import { ofPart, refusal } from "../../errors";
import type { PartialRange, Range } from "../../ranges";
import { ends } from "../../ranges/inner";
import { type Dissolved, mixture } from "../../water";
import { checkDissolved } from "../../water/inner";
import { corners, nothing } from "./corners";
import {
  nitrateLimit,
  type WeeklyChange,
  type WeeklyChangeInput,
  weeklyChange,
  weeklyRise,
} from "./weekly-change";

/** Waters to mix, and what is wanted of the mixture. */
export interface MixWaterInput {
  /**
   * The waters at hand, that one first of which most is to be used: tap water, then rain or demineralised water. A figure
   * that is wanted must be known of all.
   */
  readonly sources: readonly Dissolved[];
  /** A set point with its margin either way, or what a condition of a verdict wants; one-sided if need be. */
  readonly wanted: WantedHardness;
  /** Ammonia nitrogen that the animals give off, and water in the tank: then the weekly change is told too. */
  readonly tank?: Omit<WeeklyChangeInput, "nitrate"> | undefined;
}

/** What is wanted of a mixture: at least one of the two. */
export interface WantedHardness {
  /** °dH. */
  readonly generalHardness?: PartialRange | undefined;
  /** °dH. */
  readonly carbonateHardness?: PartialRange | undefined;
}

/** A mixture of waters. */
export interface MixedWater {
  /** How much of each source, in their order; together 1. */
  readonly shares: readonly number[];
  /** What the mixture holds, as far as it is known of all that is in it. */
  readonly result: Dissolved;
  /** What no mixture reaches together; empty where the mixture is as wanted. */
  readonly outOfReach: readonly OutOfReach[];
  /** What nitrogen asks for, with this mixture as the new water: where `tank` is given and its nitrate is known. */
  readonly weeklyChange?: WeeklyChange;
}

/** A figure that is not as wanted: °dH, or of nitrate mg/L. */
export interface OutOfReach {
  /** `nitrate` where the tank passes its limit with every mixture of that hardness, though all water is changed each week. */
  readonly on: keyof WantedHardness | "nitrate";
  /** What is lacking (above zero) or too much (below zero). */
  readonly by: number;
  /** What mixtures of these sources reach of this figure by itself; of nitrate, what the tank reaches. */
  readonly reachable: Range;
}

/**
 * How to mix water at hand so that its hardness and carbonate hardness are as wanted.
 *
 * Of the mixtures that are, the one with most of the first source, of these the one with most of the second, and so on: so
 * put first what is cheapest, and demineralised water last. Where none is, the one that misses by the fewest °dH in all.
 * Where a tank is given and nitrate is known of all sources, those come first of the mixtures as good in hardness with which
 * a weekly change of half the water (common practice, no source) keeps nitrate down, else that with least of it. All this is
 * exact: it lies at one of few corners, and all of these are tried. What is dissolved adds up when waters are mixed (see
 * `mixture`); the pH does not, and is not told: it settles with carbonate hardness and carbon dioxide.
 *
 * @throws InvalidInputError for no sources, nothing wanted, a range that is reversed or has an end below zero, a figure that
 * is wanted and unknown of a source, or one below zero; for what `weeklyChange` refuses of the tank; for a key that nothing
 * reads.
 *
 * @example
 * ```ts
 * import { mixWater } from "vivary/advice";
 *
 * const tap = { generalHardness: 16, carbonateHardness: 12, nitrate: 20 };
 * const demineralised = { generalHardness: 0, carbonateHardness: 0, nitrate: 0 };
 * const { shares, result } = mixWater({
 *   sources: [tap, demineralised],
 *   wanted: { generalHardness: { min: 4, max: 8 }, carbonateHardness: { max: 6 } },
 * });
 * shares; // => [0.5, 0.5]
 * result; // => { generalHardness: 8, carbonateHardness: 6, nitrate: 10 }
 * ```
 */
export function mixWater(input: MixWaterInput): MixedWater {
  const { sources, wanted, tank, ...others } = objectOf(input, "");
  refuseOthers(others, "");
  const figures = figuresOf(listOf(sources, "sources"), objectOf(wanted, "wanted"));
  const nitrate = tank === undefined ? [] : ofPart(["tank"], () => nitrateKeptDown(sources, tank));
  const missedBy = (some: readonly WantedFigure[], shares: readonly number[]) =>
    some.reduce((sum, figure) => sum + Math.abs(missing(figure, shares)), 0);
  const best = corners(sources.length, [...figures, ...nitrate])
    .map((shares) => ({ shares, misses: [missedBy(figures, shares), missedBy(nitrate, shares)] }))
    .reduce((one, other) => (isBetter(other, one) ? other : one));
  const shares = best.shares.map(decimal);
  const result = rounded(
    mixture(sources.map((water, index) => ({ amount: best.shares[index] ?? 0, water }))),
  );
  return {
    shares,
    result,
    ...weekly(
      tank,
      result,
      figures.flatMap((figure) => outOfReach(figure, shares)),
    ),
  };
}

/** A figure that a mixture misses. */
function outOfReach(
  figure: WantedFigure<keyof WantedHardness>,
  shares: readonly number[],
): readonly OutOfReach[] {
  const by = missing(figure, shares);
  const { on, ofSources } = figure;
  const reachable = { min: Math.min(...ofSources), max: Math.max(...ofSources) };
  return Math.abs(by) < nothing ? [] : [{ on, by: decimal(by), reachable }];
}

/** The weekly change, where a tank is given and the nitrate of the mixture is known; or that there is none. */
function weekly(
  tank: MixWaterInput["tank"],
  { nitrate }: Dissolved,
  missed: readonly OutOfReach[],
): Pick<MixedWater, "outOfReach" | "weeklyChange"> {
  if (!tank || nitrate === undefined) return { outOfReach: missed };
  const change = ofPart(["tank"], () => weeklyChange({ ...tank, nitrate }));
  if (change) return { outOfReach: missed, weeklyChange: change };
  const reached = decimal(nitrate + weeklyRise(tank));
  const by = decimal((tank.limit ?? nitrateLimit) - reached);
  return { outOfReach: [...missed, { on: "nitrate", by, reachable: { min: reached, max: reached } }] };
}

/** A figure that is wanted, and what each source has of it. */
interface WantedFigure<Name = keyof Dissolved> {
  readonly on: Name;
  readonly span: PartialRange;
  readonly ofSources: readonly number[];
  readonly ends: readonly number[];
}

const hardnesses = ["generalHardness", "carbonateHardness"] as const;

function figuresOf(
  sources: readonly Dissolved[],
  wanted: WantedHardness,
): readonly WantedFigure<keyof WantedHardness>[] {
  const { generalHardness: _, carbonateHardness: __, ...others } = wanted;
  refuseOthers(others, "wanted");
  if (sources.length === 0) throw refusal("sources", "at least one water", sources);
  for (const [index, source] of sources.entries()) checkDissolved(source, `sources[${index}]`);
  const figures = hardnesses.flatMap((on): readonly WantedFigure<keyof WantedHardness>[] => {
    const span = wanted[on];
    if (span === undefined) return [];
    checkSpan(span, `wanted.${on}`);
    const ofSources = sources.map((source, index) => notNegative(source[on], `sources[${index}].${on}`));
    return [{ on, span, ofSources, ends: [span.min, span.max].filter((end) => end !== undefined) }];
  });
  if (figures.length === 0) throw refusal("wanted", `at least one of ${hardnesses.join(", ")}`, wanted);
  return figures;
}

/** How much of the water is changed in a week at most where the mixture can see to it: common practice, no source. */
const mostChanged = 0.5;

/** The nitrate of new water with which a week adds no more than such a change takes out; none where nobody knows it. */
function nitrateKeptDown(
  sources: readonly Dissolved[],
  tank: NonNullable<MixWaterInput["tank"]>,
): readonly WantedFigure[] {
  const { nitrogen, volume, limit = nitrateLimit, ...others } = objectOf(tank, "");
  refuseOthers(others, "");
  const max = positive(limit, "limit") - weeklyRise({ nitrogen, volume }) / mostChanged;
  const ofSources = sources.flatMap(({ nitrate }) => nitrate ?? []);
  const isKnown = ofSources.length === sources.length;
  return isKnown ? [{ on: "nitrate", span: { max }, ofSources, ends: [max] }] : [];
}

function checkSpan(span: PartialRange, subject: string) {
  ends(span, subject);
  const { min = 0, max = min } = span;
  notNegative(min, `${subject}.min`);
  notNegative(max, `${subject}.max`);
}

/** What a mixture lacks of a figure, above zero, or has too much of, below zero. */
function missing({ span: { min, max }, ofSources }: WantedFigure, shares: readonly number[]): number {
  const figure = ofSources.reduce((sum, source, index) => sum + source * (shares[index] ?? 0), 0);
  if (min !== undefined && figure < min) return min - figure;
  return max !== undefined && figure > max ? max - figure : 0;
}

interface Tried {
  readonly shares: readonly number[];
  /** By how much it misses, what counts most first. */
  readonly misses: readonly number[];
}

/** Whether a mixture misses by less; where both miss alike, whether it has more of the first source in which they differ. */
function isBetter(one: Tried, other: Tried): boolean {
  const less = one.misses.map((miss, index) => (other.misses[index] ?? 0) - miss);
  const decisive = less.find((by) => Math.abs(by) > nothing);
  if (decisive !== undefined) return decisive > 0;
  const differing = one.shares.findIndex(
    (share, index) => Math.abs(share - (other.shares[index] ?? 0)) > nothing,
  );
  return (one.shares[differing] ?? 0) > (other.shares[differing] ?? 0);
}

const rounded = (water: Dissolved): Dissolved =>
  Object.fromEntries(Object.entries(water).map(([name, figure]) => [name, decimal(figure)]));
