import { axes, type Ends, figureIn, type Room, roomOf, waterAxes } from "../../compatibility/inner";
import type { Animal } from "./animals";
import type { PerAxis } from "./answer";
import { type HotTerms, isBearable, leastOxygenOf, lowered } from "./hot-end";
import type { Terms } from "./terms";

/** What some animals leave each other of each figure. */
export type Rooms = PerAxis<Room | undefined>;

/** The room that animals leave each other, and what must hold at its hot end. */
export interface Shared {
  readonly rooms: Rooms;
  readonly hot?: HotTerms | undefined;
}

/** The room that animals leave each other whatever the ammonia. */
export function roomsOf(animals: readonly Animal[], { thresholds }: Terms, by?: "given"): Rooms {
  return Object.fromEntries(
    waterAxes.map((axis) => [
      axis,
      roomOf(
        animals.map(({ waters }) => waters[axis]),
        axes[axis].giving(thresholds),
        by,
      ),
    ]),
  );
}

/**
 * The room that animals leave each other where the hot end is bearable; undefined where that leaves none. Where nobody
 * knows in what temperature or pH any of them is kept, the hot end is not known either.
 */
export function sharedWaterOf(animals: readonly Animal[], terms: Terms): Shared | undefined {
  const rooms = roomsOf(animals, terms);
  const hot = hotTermsOf(animals, rooms, terms);
  if (!hot) return { rooms };
  const bearable =
    bearableRooms(rooms, hot, terms) ?? bearableRooms(roomsOf(animals, terms, "given"), hot, terms);
  return bearable && { rooms: bearable, hot };
}

/** What must hold at the hot end; undefined where no ammonia is stated, or nobody knows where the hot end is. */
function hotTermsOf(
  animals: readonly Animal[],
  { temperature, pH, salinity }: Rooms,
  { ammonia, thresholds }: Terms,
): HotTerms | undefined {
  if (!ammonia || !temperature || !pH) return undefined;
  const profiles = animals.map(({ profile }) => profile);
  return {
    ...ammonia,
    leastOxygen: leastOxygenOf(profiles, thresholds),
    salinity: salinity ? figureIn("salinity", salinity).at : 0,
  };
}

function bearableRooms(rooms: Rooms, hot: HotTerms, { thresholds, swing }: Terms): Rooms | undefined {
  const { temperature, pH } = rooms;
  if (!temperature || !pH) return rooms;
  const spans = lowered(
    { temperature: temperature.span, pH: pH.span },
    { temperature: thresholds.leastTemperature, pH: thresholds.leastPH },
    (warmest, mostAlkaline) =>
      isBearable(warmest + (swing.temperature ?? 0), mostAlkaline + (swing.pH ?? 0), hot),
  );
  return spans && { ...rooms, temperature: upTo(temperature, spans.temperature), pH: upTo(pH, spans.pH) };
}

/** A room of which the upper end came down; no animal limits it there then. */
const upTo = (room: Room, { max }: Ends): Room =>
  max >= room.span.max ? room : { ...room, span: { min: room.span.min, max }, most: undefined };
