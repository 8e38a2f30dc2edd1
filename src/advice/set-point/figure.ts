import { decimal } from "../../decimal";
import type { Ends } from "./ends";
import { isWide, type Room } from "./room";

/** A figure of water to aim at, and how far it may move either way. */
export interface Figure {
  readonly at: number;
  readonly margin: number;
}

/** The figure in the middle of what all are kept in, else of what all can be given. */
export function middleIn(room: Room): Figure {
  const { min, max } = aimOf(room);
  const at = (min + max) / 2;
  const margin = Math.min(at - room.within.min, room.within.max - at);
  return { at: decimal(at), margin: Math.max(decimal(margin), 0) };
}

/** No salt at all where that serves all, else the middle; in water without salt only the upper end counts. */
export const freshestIn = (room: Room): Figure =>
  aimOf(room).min > 0 ? middleIn(room) : { at: 0, margin: decimal(room.within.max) };

const aimOf = ({ kept, given }: Room): Ends => (isWide(kept, 0) ? kept : given);
