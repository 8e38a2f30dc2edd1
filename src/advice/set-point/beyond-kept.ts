import { type Ends, figureIn, waterAxes } from "../../compatibility/inner";
import { decimal } from "../../decimal";
import type { PartialRange } from "../../ranges";
import type { Animal } from "./animals";
import type { WaterBeyondKept } from "./answer";
import type { Rooms } from "./rooms";
import type { Terms } from "./terms";

/**
 * Who has water that they are not kept in: for good somewhere in the rooms; in a season at the temperature to aim at; or
 * while another figure swings beside its margin.
 */
export const beyondKeptIn = (
  rooms: Rooms,
  animals: readonly Animal[],
  { swing }: Terms,
): readonly WaterBeyondKept[] =>
  waterAxes.flatMap((on) => {
    const room = rooms[on];
    if (!room) return [];
    const { at } = figureIn(on, room);
    const moves = on === "salinity" ? 0 : (swing[on] ?? 0);
    const swinging = movedBy(on === "temperature" ? { min: at, max: at } : room.span, moves);
    return animals.flatMap(({ place, waters }) => {
      const kept = waters[on]?.figures.kept;
      if (!kept) return [];
      const beyond = { on, of: place, kept };
      if (isAbove(room.span, kept) || isBelow(room.span, kept)) return [beyond];
      const [isHigher, isLower] = [isAbove(swinging, kept), isBelow(swinging, kept)];
      if (on !== "temperature") return isHigher || isLower ? [{ ...beyond, when: "swinging" } as const] : [];
      return [
        ...(isHigher ? [{ ...beyond, when: "hottest" } as const] : []),
        ...(isLower ? [{ ...beyond, when: "coolest" } as const] : []),
      ];
    });
  });

const movedBy = ({ min, max }: Ends, swing: number): Ends => ({ min: min - swing, max: max + swing });

const isAbove = (span: Ends, { max = Number.POSITIVE_INFINITY }: PartialRange) => decimal(span.max) > max;

const isBelow = (span: Ends, { min = Number.NEGATIVE_INFINITY }: PartialRange) => decimal(span.min) < min;
