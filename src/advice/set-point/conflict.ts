import type { Animal } from "./animals";
import type { DoubtfulWater, WaterConflict } from "./answer";
import { axes, type WaterAxis, waterAxes } from "./room/axes";
import type { Ends } from "./room/ends";
import type { KeptWater } from "./room/kept-water";
import { type Opposed, opposedIn } from "./room/room";
import { roomsOf, type Shared, sharedWaterOf } from "./room/rooms";
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

/** The first figure of which two prove that no water serves all. */
function conflictIn(
  animals: readonly Animal[],
  terms: Terms,
  spanOf: (water: KeptWater) => Ends | undefined,
): DoubtfulWater | undefined {
  for (const axis of waterAxes) {
    const opposed = opposedOn(axis, animals, terms, spanOf);
    if (opposed) return opposed;
  }
  return undefined;
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
