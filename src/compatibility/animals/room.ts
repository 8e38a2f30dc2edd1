import type { SizeForGroup } from "../../species";

type Rooms = readonly SizeForGroup[];

/**
 * The shortest tank for so many animals, in cm: that stated for the smallest number not below theirs, else for the
 * greatest; where their number is not known, that for the fewest.
 */
export function runNeeded(rooms: Rooms, count = 1): number {
  const room = rooms.find(({ for: number }) => number >= count) ?? rooms.at(-1);
  return room?.least ?? 0;
}

/**
 * The floor that so many animals need, in cm². Between two stated numbers it grows in proportion; each animal past the
 * greatest adds the further floor, at most its share, and each below the least takes as much off, down to half. Where
 * their number is not known, the floor for the fewest.
 *
 * @param further - The floor that one more adds. Where absent, each more adds its share of the stated floor, and fewer
 * take nothing off.
 */
export function floorNeeded(rooms: Rooms, further: number | undefined, count = rooms[0]?.for ?? 1): number {
  const fewer = rooms.filter(({ for: number }) => number <= count).at(-1);
  const more = rooms.find(({ for: number }) => number >= count);
  if (fewer && more) return between(fewer, more, count);
  const stated = fewer ?? more;
  if (!stated) return 0;
  const share = stated.least / stated.for;
  const each = Math.min(further ?? (count < stated.for ? 0 : share), share);
  return Math.max(stated.least + each * (count - stated.for), stated.least / 2);
}

function between(fewer: SizeForGroup, more: SizeForGroup, count: number): number {
  if (fewer === more) return fewer.least;
  const way = (count - fewer.for) / (more.for - fewer.for);
  return fewer.least + way * (more.least - fewer.least);
}
