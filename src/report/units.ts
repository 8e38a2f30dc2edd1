import type { Quantity } from "../compatibility";
import { refusal } from "../errors";
import { convert } from "../units";

/** The units a report is written in. Temperatures are °F in US units and °C otherwise. */
export type UnitSystem = "metric" | "us" | "imperial";

type Shown = readonly [unit: string, symbol: string, convert: (value: number) => number];

const inches = (value: number) => convert(value, "cm", "in");
const feet = (value: number) => convert(value, "m", "ft");
const squareInches = (value: number) => inches(inches(value));
const pounds = (value: number) => convert(value, "kg", "lb");
const same = (value: number) => value;

/** How a canonical unit is shown where it is not shown as it is. */
const british: readonly Shown[] = [
  ["cm", "in", inches],
  ["cm2", "sq in", squareInches],
  ["m2", "sq ft", (value) => feet(feet(value))],
  ["kg", "lb", pounds],
  ["L", "imp gal", (value) => convert(value, "L", "gal-imp")],
];
const american: readonly Shown[] = [
  ...british.slice(0, 4),
  ["L", "US gal", (value) => convert(value, "L", "gal-us")],
  ["degC", "°F", (value) => convert(value, "degC", "degF")],
];
const metric: readonly Shown[] = [
  ["1", "%", (value) => value * 100],
  ["cm2", "cm²", same],
  ["m2", "m²", same],
  ["mg/d", "mg a day", same],
  ["h", "hours", same],
  ["degC", "°C", same],
  ["dH", "°dH", same],
  ["kN/m2", "kN/m²", same],
  ["a", "years", same],
];
const systems = { metric, us: [...american, ...metric], imperial: [...british, ...metric] };

/** Writes measures in a system of units. */
export interface Quantities {
  /** `24 °C`, `at least 80 cm`, `6 to 8`. */
  readonly text: (measure: Quantity) => string;
}

/** How measures are written in a system of units, numbers with a decimal point. Refuses an unknown system. */
export function quantities(system: UnitSystem): Quantities {
  if (!Object.hasOwn(systems, system)) {
    throw refusal("units", Object.keys(systems).join(", "), system);
  }
  const shownAs = (unit: string) => systems[system].find(([name]) => name === unit) ?? [unit, unit, same];
  const text = (measure: Quantity): string => {
    const [, symbol, change] = shownAs(measure.unit ?? "") as Shown;
    const number = (value: number) => rounded(change(value));
    const unit = symbol && ` ${symbol}`;
    if ("value" in measure) {
      return typeof measure.value === "number" ? `${number(measure.value)}${unit}` : measure.value;
    }
    const { min, max } = measure;
    if (min === undefined) return max === undefined ? "" : `at most ${number(max)}${unit}`;
    if (max === undefined) return `at least ${number(min)}${unit}`;
    return min === max ? `${number(min)}${unit}` : `${number(min)} to ${number(max)}${unit}`;
  };
  return { text };
}

/** One decimal below 100, none from there on. */
function rounded(value: number): string {
  return String(Number(value.toFixed(Math.abs(value) < 100 ? 1 : 0)));
}
