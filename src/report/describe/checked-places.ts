import { listOf } from "../../checks";
import { checkPlace } from "./checked-verdict";

/** Refuses what is no list of places among so many groups. */
export function checkPlaces(places: readonly number[], groups: number, at: string): void {
  for (const place of listOf(places, at)) checkPlace(place, groups, at);
}
