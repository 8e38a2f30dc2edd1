import type { Animal } from "./animals";
import type { WaterConflict } from "./answer";
import { axes, waterAxes } from "./room/axes";
import { opposedIn } from "./room/room";
import { roomsOf, sharedWaterOf } from "./room/rooms";
import type { Terms } from "./terms";

/** Two animals that prove that no water serves all; undefined where some does. */
export function conflictOf(animals: readonly Animal[], terms: Terms): WaterConflict | undefined {
  for (const axis of waterAxes) {
    const waters = animals.map((animal) => animal.waters[axis]);
    const opposed = opposedIn(waters, axes[axis].giving(terms.thresholds));
    if (opposed) return { on: axis, between: placesOf(animals, opposed) };
  }
  if (sharedWaterOf(animals, terms)) return undefined;
  const { temperature, pH } = roomsOf(animals, terms, "given");
  return { on: "ammonia", between: placesOf(animals, [temperature?.least ?? 0, pH?.least ?? 0]) };
}

const placesOf = (animals: readonly Animal[], [one, other]: readonly [number, number]) =>
  [animals[one]?.place ?? one, animals[other]?.place ?? other] as const;
