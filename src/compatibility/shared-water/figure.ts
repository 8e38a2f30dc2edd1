import { decimal } from "../../decimal";
import type { WaterAxis } from "./axes";
import { widthOf } from "./ends";
import { middleOf, type Room } from "./room";

/** A figure of water to aim at, and how far it may move either way. */
export interface Figure {
  readonly at: number;
  readonly margin: number;
}

/** The figure to aim at in a room: of salinity the freshest that serves all, of all others the middle. */
export const figureIn = (axis: WaterAxis, room: Room): Figure =>
  axis === "salinity" ? freshestIn(room) : middleIn(room);

/** The figure in the middle of a room. */
const middleIn = ({ span }: Room): Figure => ({
  at: decimal(middleOf(span)),
  margin: decimal(widthOf(span) / 2),
});

/** No salt at all where that serves all, else the middle; in water without salt only the upper end counts. */
const freshestIn = (room: Room): Figure =>
  room.span.min > 0 ? middleIn(room) : { at: 0, margin: decimal(room.span.max) };
