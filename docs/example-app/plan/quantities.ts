import { foamArea } from "vivary/load";
import { type ShownUnit, type UnitSystem, unitSystems } from "vivary/report";
import { convert } from "vivary/units";

/**
 * What a number in a plan measures. `media`: the surface of what the filter holds, told as the coarse foam that has it
 * for certain.
 */
export type Quantity =
  | "length"
  | "temperature"
  | "hardness"
  | "salinity"
  | "share"
  | "media"
  | "days"
  | "plain";

/** The unit in which a plan holds each, and that in which it is shown in each system; none of plain numbers. */
const units = {
  length: { held: "cm", metric: "cm", us: "in", imperial: "in" },
  temperature: { held: "degC", metric: "degC", us: "degF", imperial: "degC" },
  hardness: { held: "dH", metric: "dH", us: "mg/L-CaCO3", imperial: "mg/L-CaCO3" },
  salinity: { held: "g/kg", metric: "g/kg", us: "g/kg", imperial: "g/kg" },
  media: { held: "L", metric: "L", us: "gal-us", imperial: "gal-imp" },
} as const;

const wholePercent = 100;

/** What a plan has of a quantity for each unit of it: for each litre of foam so many square metres, for others itself. */
const perHeld = (quantity: Quantity) => (quantity === "media" ? foamArea({ volume: 1 }).min : 1);

/** Whether something is the name of a system of units. */
export const isSystem = (name: string | undefined): name is UnitSystem =>
  unitSystems.some((system) => system === name);

type Measured = keyof typeof units;
const isMeasured = (quantity: Quantity): quantity is Measured => Object.hasOwn(units, quantity);

/** A unit of length in which a plan may hold those of its tank. */
type HeldLength = "mm" | "cm" | "m" | "in" | "ft";

/** How numbers are held and shown. */
export interface Scale {
  readonly quantity: Quantity;
  readonly system: UnitSystem;
  /** Of lengths: in which unit the plan holds them. */
  readonly held: HeldLength;
}

/** The unit in which a quantity is shown; undefined for plain numbers. */
export function shownUnit({ quantity, system }: Scale): ShownUnit | undefined {
  if (quantity === "share") return "%";
  if (quantity === "days") return "d";
  return isMeasured(quantity) ? units[quantity][system] : undefined;
}

const heldUnit = (quantity: Measured, held: HeldLength) =>
  quantity === "length" ? held : units[quantity].held;

/** A number of the plan as it is shown. */
export function toShown(value: number, { quantity, system, held }: Scale): number {
  if (quantity === "share") return value * wholePercent;
  return isMeasured(quantity)
    ? convert(value / perHeld(quantity), heldUnit(quantity, held), units[quantity][system])
    : value;
}

/** A number that was typed as the plan holds it. */
export function toHeld(value: number, { quantity, system, held }: Scale): number {
  if (quantity === "share") return value / wholePercent;
  return isMeasured(quantity)
    ? convert(value, units[quantity][system], heldUnit(quantity, held)) * perHeld(quantity)
    : value;
}
