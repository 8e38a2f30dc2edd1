import { type Ends, figureIn, waterAxes } from "../../compatibility/inner";
import { decimal } from "../../decimal";
import type { PartialRange } from "../../ranges";
import type { Animal } from "./animals";
import type { WaterBeyondKept } from "./answer";
import type { Rooms } from "./rooms";
import type { Terms } from "./terms";

/** Who has water that they are not kept in: for good somewhere in the rooms, or in a season at the temperature to aim at. */
export const beyondKeptIn = (
  rooms: Rooms,
  animals: readonly Animal[],
  { swing }: Terms,
): readonly WaterBeyondKept[] =>
  waterAxes.flatMap((on) => {
    const room = rooms[on];
    if (!room) return [];
    const moves = on === "salinity" ? 0 : (swing[on] ?? 0);
    const isOfSeasons = on === "temperature" && moves > 0;
    const usual = isOfSeasons ? room.span : movedBy(room.span, moves);
    const { at } = figureIn(on, room);
    const seasons = isOfSeasons ? movedBy({ min: at, max: at }, moves) : usual;
    return animals.flatMap(({ place, waters }) => {
      const kept = waters[on]?.figures.kept;
      if (!kept) return [];
      const beyond = { on, of: place, kept };
      if (isAbove(usual, kept) || isBelow(usual, kept)) return [beyond];
      return [
        ...(isAbove(seasons, kept) ? [{ ...beyond, when: "hottest" } as const] : []),
        ...(isBelow(seasons, kept) ? [{ ...beyond, when: "coolest" } as const] : []),
      ];
    });
  });

const movedBy = ({ min, max }: Ends, swing: number): Ends => ({ min: min - swing, max: max + swing });

const isAbove = (span: Ends, { max = Number.POSITIVE_INFINITY }: PartialRange) => decimal(span.max) > max;

const isBelow = (span: Ends, { min = Number.NEGATIVE_INFINITY }: PartialRange) => decimal(span.min) < min;
