import type { TraitValue } from "../../species";

type Floor = TraitValue<"space.footprint">;

/** The floor that one animal more adds, in cm²: as stated, at most its share of the floor for the stated number. */
function shareOfFloor({ least, for: stated }: Floor, further: number | undefined): number {
  const share = least / stated;
  return Math.min(further ?? share, share);
}

/** The floor that so many animals need, in cm². */
export function floorNeeded(floor: Floor, further: number | undefined, count = 1): number {
  return floor.least + shareOfFloor(floor, further) * Math.max(count - floor.for, 0);
}
