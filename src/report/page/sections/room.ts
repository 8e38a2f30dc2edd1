import { commonSides } from "../../matters/room";
import type { Telling } from "../telling";

/** The least room that is stated for the fewest animals. */
export interface StatedRoom {
  readonly animals: number;
  readonly length: string;
  /** The floor as an area. */
  readonly floor: string;
  /** Length and width that make the floor; empty where one of them is not known. */
  readonly sides: string;
}

/** The room of the number that belongs together, else of the fewest that it is stated for. */
export function roomOf({ known, size, write }: Telling): StatedRoom | undefined {
  const lengths = known("space.baseLength") ?? [];
  const floors = known("space.footprint") ?? [];
  const least = known("social.group")?.least ?? 1;
  const stated = [...lengths, ...floors].map((room) => room.for);
  if (stated.length === 0) return undefined;
  const animals = stated.includes(least) ? least : Math.min(...stated);
  const length = lengths.find((room) => room.for === animals)?.least;
  const floor = floors.find((room) => room.for === animals)?.least;
  const other = length && floor ? Math.ceil(floor / length / 5 - 0.001) * 5 : undefined;
  const sides =
    length && other
      ? { value: Math.max(length, other), by: Math.min(length, other), unit: "cm" }
      : commonSides(floor);
  return {
    animals,
    length: size("space.baseLength", length),
    floor: size("space.footprint", floor),
    sides: write(sides),
  };
}
