import type { Measure, Unit } from "../../src/units";

/** Every unit, by measure, written out a second time so that a unit lost or moved is noticed. */
export const everyUnit: Readonly<Record<Measure, readonly Unit[]>> = {
  length: ["mm", "cm", "m", "in", "ft"],
  area: ["cm2", "m2"],
  volume: ["mL", "L", "m3", "in3", "ft3", "qt-us", "gal-us", "gal-imp"],
  mass: ["mg", "g", "kg", "oz", "lb"],
  temperature: ["degC", "degF", "K"],
  hardness: ["dH", "fH", "eH", "gpg", "mg/L-CaCO3", "mmol/L-CaCO3", "meq/L"],
  flowRate: ["L/h", "L/min", "gal-us/h"],
  speed: ["cm/s", "m/s", "ft/s"],
  conductivity: ["uS/cm", "mS/cm"],
  salinity: ["g/kg"],
  pressure: ["kPa", "hPa", "atm", "mmHg"],
  time: ["s", "min", "h", "d", "mo", "a"],
};

/** Every ordered pair of units of one measure, a unit with itself among them. */
export const convertiblePairs = Object.values(everyUnit).flatMap((units) =>
  units.flatMap((from) => units.map((to) => ({ from, to }))),
);
