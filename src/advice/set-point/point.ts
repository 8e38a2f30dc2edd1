import { type Figure, figureIn, type Room, type WaterAxis, waterAxes } from "../../compatibility/inner";
import { decimal } from "../../decimal";
import type { PlannedWater } from "../../plan";
import type { Animal } from "./animals";
import type { Limits, OpenWater, PerAxis, SetPoint } from "./answer";
import { beyondKeptIn } from "./beyond-kept";
import { doubtsOf } from "./conflict";
import { type HotEnd, hotEndAt } from "./hot-end";
import type { Shared } from "./rooms";
import type { Terms } from "./terms";

/** The water for animals, in what they share. */
export function pointOf(animals: readonly Animal[], shared: Shared, terms: Terms): SetPoint {
  const figures = mapped(shared.rooms, (room, axis) => figureIn(axis, room));
  const hotEnd = hotEndOf(shared, figures, terms);
  return {
    water: waterOf(
      mapped(figures, ({ at }) => at),
      terms,
    ),
    margin: mapped(figures, ({ margin }) => margin),
    limiting: mapped(shared.rooms, (room) => limitsOf(room, animals)),
    ...(hotEnd && { hotEnd }),
    open: animals.flatMap(({ place, waters }) =>
      waterAxes.flatMap((on): readonly OpenWater[] => (waters[on] ? [] : [{ on, of: place }])),
    ),
    beyondKept: beyondKeptIn(shared.rooms, animals, terms),
    doubtful: doubtsOf(animals, terms),
  };
}

/** What is there on each axis, turned into something else. */
function mapped<From, To>(
  perAxis: PerAxis<From | undefined>,
  to: (from: From, axis: WaterAxis) => To,
): PerAxis<To> {
  return Object.fromEntries(
    waterAxes.flatMap((axis) => {
      const from = perAxis[axis];
      return from === undefined ? [] : [[axis, to(from, axis)]];
    }),
  );
}

/** Water as a plan has it; a swing makes its hottest and coolest. */
function waterOf(at: PerAxis<number>, { swing }: Terms): PlannedWater {
  if (at.temperature === undefined || !swing.temperature) return at;
  return {
    ...at,
    hottest: decimal(at.temperature + swing.temperature),
    coolest: decimal(at.temperature - swing.temperature),
  };
}

function limitsOf({ least, most }: Room, animals: readonly Animal[]): Limits {
  const placeOf = (index: number | undefined) => (index === undefined ? undefined : animals[index]?.place);
  const [lower, upper] = [placeOf(least), placeOf(most)];
  return { ...(lower !== undefined && { least: lower }), ...(upper !== undefined && { most: upper }) };
}

/** What the water holds at the far end of margin and swing. */
function hotEndOf({ hot }: Shared, figures: PerAxis<Figure>, { swing }: Terms): HotEnd | undefined {
  const { temperature, pH } = figures;
  if (!hot || !temperature || !pH) return undefined;
  const [warmest, mostAlkaline] = [
    temperature.at + temperature.margin + (swing.temperature ?? 0),
    pH.at + pH.margin + (swing.pH ?? 0),
  ];
  return hotEndAt(decimal(warmest), decimal(mostAlkaline), hot);
}
