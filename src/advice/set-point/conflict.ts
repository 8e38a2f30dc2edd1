import {
  axes,
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

/** What of the water that animals share hangs on the end of a handbook's class. */
export const doubtsOf = (animals: readonly Animal[], terms: Terms): readonly DoubtfulWater[] =>
  waterAxes.flatMap((axis) => opposedOn(axis, animals, terms, ({ surely }) => surely) ?? []);

/** Each two that share water, and cannot be kept in it for good: places in the list. */
export const apartAmong = (animals: readonly Animal[], terms: Terms): readonly DoubtfulWater["between"][] =>
  waterAxes.flatMap((axis) =>
    [...apartOn(axis, animals, terms, ({ given }) => given)].map(({ between }) => between),
  );

/** The first figure of which two prove that no water serves all. */
function conflictIn(
  animals: readonly Animal[],
  terms: Terms,
  spanOf: (water: KeptWater) => Ends | undefined,
): DoubtfulWater | undefined {
  for (const axis of waterAxes) {
    const opposed = opposedOn(axis, animals, terms, spanOf);
    if (opposed) return opposed;
    const [apart] = apartOn(axis, animals, terms, spanOf);
    if (apart) return apart;
  }
  return undefined;
}

/** Each two that meet only past what is best for one of them: the one that needs the figure higher, and the other. */
function* apartOn(
  on: WaterAxis,
  animals: readonly Animal[],
  { thresholds }: Terms,
  spanOf: (water: KeptWater) => Ends | undefined,
): Generator<DoubtfulWater, void> {
  const giving = axes[on].giving(thresholds);
  const known = animals.flatMap(({ place, waters }) => {
    const water = waters[on];
    const span = water && spanOf(water);
    return span ? [{ place, figures: water.figures, span }] : [];
  });
  for (const [index, one] of known.entries())
    for (const other of known.slice(index + 1)) {
      if (!meetPastTheirBest(one.figures, other.figures, giving)) continue;
      const isHigher = one.span.min >= other.span.min;
      yield { on, between: isHigher ? [one.place, other.place] : [other.place, one.place] };
    }
}

function opposedOn(
  on: WaterAxis,
  animals: readonly Animal[],
  { thresholds }: Terms,
  spanOf: (water: KeptWater) => Ends | undefined,
): DoubtfulWater | undefined {
  const spans = animals.map(({ waters }) => {
    const water = waters[on];
    return water && spanOf(water);
  });
  const opposed = opposedIn(spans, axes[on].giving(thresholds));
  return opposed && { on, between: placesOf(animals, opposed) };
}

const placesOf = (animals: readonly Animal[], [one, other]: Opposed) =>
  [animals[one]?.place ?? one, animals[other]?.place ?? other] as const;
