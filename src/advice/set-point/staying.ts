import type { Animal } from "./animals";
import { axes, type WaterAxis, waterAxes } from "./axes";
import { conflictOf } from "./conflict";
import type { Ends } from "./ends";
import { isBearable, leastOxygenOf } from "./hot-end";
import { largestCompany } from "./largest-company";
import type { Terms } from "./terms";

/** The most animals that share water; of equally many the earliest. One that needs a narrower water than others can share stays alone. */
export function stayingOf(animals: readonly Animal[], terms: Terms): readonly Animal[] {
  const spans = animals.map(({ waters }) =>
    waterAxes.map((axis) => lowerEndsOf(waters[axis]?.given, axis, terms)),
  );
  const together = largestCompany({ spans, isBearable: bearableFor(animals, terms) });
  if (together.length > 0) return animals.filter((_, index) => together.includes(index));
  return animals.filter((animal) => !conflictOf([animal], terms)).slice(0, 1);
}

/** Where the lower end of a span may lie that is just wide enough to be held, within what an animal can be given. */
function lowerEndsOf(given: Ends | undefined, axis: WaterAxis, { thresholds }: Terms): Ends {
  const { min, max } = given ?? { min: Number.NEGATIVE_INFINITY, max: Number.POSITIVE_INFINITY };
  return { min, max: max - axes[axis].giving(thresholds).least };
}

/** Whether the least water above a corner is bearable at its hot end; all is where no ammonia is stated. */
const bearableFor =
  (animals: readonly Animal[], { ammonia, thresholds, swing }: Terms) =>
  (corner: readonly number[], members: readonly number[]): boolean => {
    const [temperature, pH, salinity] = (["temperature", "pH", "salinity"] as const).map(
      (axis) => corner[waterAxes.indexOf(axis)] ?? Number.NEGATIVE_INFINITY,
    );
    if (!ammonia || !Number.isFinite(temperature) || !Number.isFinite(pH)) return true;
    const profiles = members.flatMap((member) => animals[member]?.profile ?? []);
    return isBearable(
      (temperature ?? 0) + thresholds.leastTemperature + (swing.temperature ?? 0),
      (pH ?? 0) + thresholds.leastPH + (swing.pH ?? 0),
      { ...ammonia, leastOxygen: leastOxygenOf(profiles, thresholds), salinity: Math.max(salinity ?? 0, 0) },
    );
  };
