import type { Finding, Verdict } from "../../compatibility";
import { numberOf } from "../figure";
import { isOfRoom } from "./order";

/** How large a floor is in cm and cm²; what nobody says is absent. */
export interface Room {
  readonly length?: number;
  readonly floor?: number;
}

/** The room that some findings ask for, the greatest of each; what the verdict's other findings know of the length too. */
export function roomNeeded({ findings, met }: Verdict, asking: readonly Finding[]): Room {
  const of = new Set(asking.map(({ from }) => from));
  const known = [...findings, ...met].filter(({ rule, from }) => rule === "longest-run" && of.has(from));
  return {
    ...greatest("length", known.map(neededOf)),
    ...greatest("floor", asking.filter(({ rule }) => rule !== "longest-run").map(floorOf)),
  };
}

/** The room that the tank has. */
export function roomThere({ findings, met }: Verdict): Room {
  const all = [...findings, ...met];
  return {
    ...greatest("length", all.filter(({ rule }) => rule === "longest-run").map(plannedOf)),
    ...greatest("floor", all.filter(({ rule }) => rule === "footprint").map(plannedOf)),
  };
}

/** Length and width of a floor, the longer side first; nothing where either is not known. What is needed is rounded up. */
export function sidesOf(
  { length, floor }: Room,
  step = 1,
): { readonly value: number; readonly by: number; unit: "cm" } | undefined {
  if (length === undefined || floor === undefined) return undefined;
  const other = Math.ceil(floor / length / step - 0.001) * step;
  return { value: Math.max(length, other), by: Math.min(length, other), unit: "cm" };
}

/** The sides of the floor that is needed: as long as the tank is, if that is long enough, and not nearly square. */
export function sidesNeeded(room: Room, own: Room) {
  const isLonger = room.length !== undefined && own.length !== undefined && own.length > room.length;
  const sides = sidesOf(isLonger ? { ...room, length: own.length } : room, 5);
  return sides && sides.by > widest * sides.value ? commonSides(room.floor) : atLeast(sides);
}

/** How wide aquaria commonly are at most, as a share of the length. */
const widest = 0.65;

/** How much longer than wide aquaria commonly are. */
const commonShape = 2.2;

/** The sides of an aquarium of common shape with a floor, the length in steps of 5 cm. */
export function commonSides(floor: number | undefined) {
  if (floor === undefined) return undefined;
  return atLeast(sidesOf({ length: Math.round(Math.sqrt(commonShape * floor) / 5) * 5, floor }, 5));
}

/** Sides of which no unit may cut anything off. */
const atLeast = (sides: ReturnType<typeof sidesOf>) =>
  sides && ({ min: sides.value, by: sides.by, unit: sides.unit } as const);

function greatest<Name extends "length" | "floor">(
  name: Name,
  figures: readonly (number | undefined)[],
): Room {
  const known = figures.filter((figure) => figure !== undefined);
  return known.length > 0 ? { [name]: Math.max(...known) } : {};
}

const neededOf = (finding: Finding) => (isOfRoom(finding) ? numberOf(finding.measures?.needed) : undefined);
const plannedOf = (finding: Finding) => (isOfRoom(finding) ? numberOf(finding.measures?.planned) : undefined);

/** The floor that a finding asks for: of one that restricts, what its condition says. */
function floorOf(finding: Finding): number | undefined {
  if (finding.weight !== "restricting") return neededOf(finding);
  const { on, wanted } = finding.condition;
  return on === "tank.footprint" && "min" in wanted ? wanted.min : undefined;
}
