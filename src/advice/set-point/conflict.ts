import {
  axes,
  bothMustGive,
  type Ends,
  type KeptWater,
  meetPastTheirBest,
  type Opposed,
  opposedIn,
  type WaterAxis,
  waterAxes,
} from "../../compatibility/inner";
import type { Animal } from "./animals";
import type { DoubtfulWater, WaterConflict } from "./answer";
import { roomsOf, type Shared, sharedWaterOf } from "./rooms";
import type { Terms } from "./terms";

/** A figure of water, and two animals by their places in the list: the one that needs it higher, and the other. */
type Two = Pick<DoubtfulWater, "on" | "between">;

/** The water that animals share, or the two that prove that there is none; certain proofs first. */
export function sharedOrConflict(animals: readonly Animal[], terms: Terms): Shared | WaterConflict {
  const certain = conflictIn(animals, terms, ({ given, standsIn }) => (standsIn ? undefined : given));
  if (certain) return { ...certain, isCertain: true };
  const likely = conflictIn(animals, terms, ({ given }) => given);
  if (likely) return { ...likely, isCertain: false };
  const shared = sharedWaterOf(animals, terms);
  if (shared) return shared;
  const { temperature, pH } = roomsOf(animals, terms, "given");
  const between = placesOf(animals, [temperature?.least ?? 0, pH?.least ?? 0]);
  return { on: "ammonia", between, isCertain: true };
}

/**
 * What of the water that animals share nobody knows that they do: the two that prove that it hangs on the end of a
 * handbook's class, and each two others of which both would have to give way.
 */
export const doubtsOf = (animals: readonly Animal[], terms: Terms): readonly DoubtfulWater[] =>
  waterAxes.flatMap((axis) => {
    const vague = opposedOn(axis, animals, terms, ({ surely }) => surely);
    const isTold = ({ between }: Two) => between.every((place) => vague?.between.includes(place));
    const far = [...twosOn(axis, animals, terms, ({ given }) => given, bothMustGive)].filter(
      (two) => !isTold(two),
    );
    return [
      ...(vague ? [{ ...vague, reason: "class-end" } as const] : []),
      ...far.map((two) => ({ ...two, reason: "both-give-way" }) as const),
    ];
  });

/** Each two that share water, and cannot be kept in it for good: places in the list. */
export const apartAmong = (animals: readonly Animal[], terms: Terms): readonly Two["between"][] =>
  waterAxes.flatMap((axis) =>
    [...twosOn(axis, animals, terms, ({ given }) => given, meetPastTheirBest)].map(({ between }) => between),
  );

/** The first figure of which two prove that no water serves all. */
function conflictIn(
  animals: readonly Animal[],
  terms: Terms,
  spanOf: (water: KeptWater) => Ends | undefined,
): Two | undefined {
  for (const axis of waterAxes) {
    const opposed = opposedOn(axis, animals, terms, spanOf);
    if (opposed) return opposed;
    const [apart] = twosOn(axis, animals, terms, spanOf, meetPastTheirBest);
    if (apart) return apart;
  }
  return undefined;
}

/** Each two of which something holds, by what is known of their water: the one that needs the figure higher, and the other. */
function* twosOn(
  on: WaterAxis,
  animals: readonly Animal[],
  { thresholds }: Terms,
  spanOf: (water: KeptWater) => Ends | undefined,
  holds: typeof meetPastTheirBest,
): Generator<Two, void> {
  const giving = axes[on].giving(thresholds);
  const known = animals.flatMap(({ place, waters }) => {
    const water = waters[on];
    const span = water && spanOf(water);
    return span ? [{ place, figures: water.figures, span }] : [];
  });
  for (const [index, one] of known.entries())
    for (const other of known.slice(index + 1)) {
      if (!holds(one.figures, other.figures, giving)) continue;
      const isHigher = one.span.min >= other.span.min;
      yield { on, between: isHigher ? [one.place, other.place] : [other.place, one.place] };
    }
}

function opposedOn(
  on: WaterAxis,
  animals: readonly Animal[],
  { thresholds }: Terms,
  spanOf: (water: KeptWater) => Ends | undefined,
): Two | undefined {
  const spans = animals.map(({ waters }) => {
    const water = waters[on];
    return water && spanOf(water);
  });
  const opposed = opposedIn(spans, axes[on].giving(thresholds));
  return opposed && { on, between: placesOf(animals, opposed) };
}

const placesOf = (animals: readonly Animal[], [one, other]: Opposed) =>
  [animals[one]?.place ?? one, animals[other]?.place ?? other] as const;
