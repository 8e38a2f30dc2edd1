import { finite, oneOf } from "../checks";
import { decimal } from "../decimal";
import { frozen } from "../frozen";
import { onceOfEach } from "../made-once";
import { convert } from "../units";
import type { Figure, WriteQuantity } from "./figure";
import type { Messages } from "./messages/messages";
import type { ShownUnit } from "./shown-unit";

/**
 * The units a report is written in. Temperatures are °F in US units only; hardness is ppm of CaCO3, as test kits tell it
 * where inches are used (common practice), in both but the metric.
 */
export type UnitSystem = "metric" | "us" | "imperial";

/** Every system of units, for forms. */
export const unitSystems: readonly UnitSystem[] = /* @__PURE__ */ frozen(["metric", "us", "imperial"]);

type Shown = readonly [unit: ShownUnit, convert: (value: number) => number];
type Units = Readonly<Record<string, Shown>>;

const same = (value: number) => value;
const inches = (value: number) => convert(value, "cm", "in");
const feet = (value: number) => convert(value, "m", "ft");

const metric: Units = {
  "1": ["%", (value) => value * 100],
  cm: ["cm", same],
  cm2: ["cm2", same],
  m2: ["m2", same],
  L: ["L", same],
  kg: ["kg", same],
  degC: ["degC", same],
  dH: ["dH", same],
  "g/kg": ["g/kg", same],
  "mg/L": ["mg/L", same],
  h: ["h", same],
  d: ["d", same],
  mo: ["mo", same],
  a: ["a", same],
};
const imperial: Units = {
  ...metric,
  cm: ["in", inches],
  cm2: ["in2", (value) => inches(inches(value))],
  m2: ["ft2", (value) => feet(feet(value))],
  kg: ["lb", (value) => convert(value, "kg", "lb")],
  dH: ["mg/L-CaCO3", (value) => convert(value, "dH", "mg/L-CaCO3")],
  L: ["gal-imp", (value) => convert(value, "L", "gal-imp")],
};
const us: Units = {
  ...imperial,
  L: ["gal-us", (value) => convert(value, "L", "gal-us")],
  degC: ["degF", (value) => convert(value, "degC", "degF")],
};
const systems: Readonly<Record<UnitSystem, Units>> = { metric, us, imperial };

/** How figures are written in a language and a system of units. Refuses an unknown system. */
export function quantityWriter(messages: Messages, system: UnitSystem): WriteQuantity {
  const { language, ranges, units, unitsOfOne, beforeUnit } = messages;
  const ofSystem = unitsOf(system);
  const [usual, fine] = [numberWriter(language, 1), numberWriter(language, 2)];
  /** Unrounded to what people say, each with more decimals. */
  const closer = [usual, ...[1, 2].map((digits) => numberWriter(language, digits, digits))];
  const written = (figure: Figure, beside: Figure = figure, closely?: NumberWriter): Written => {
    const shown = inFittingUnit(figure, beside);
    const { unit = "", value, by, min, max } = shown;
    const [name, change] = shownIn(ofSystem, unit);
    const behind = (text: string) => {
      const symbol = name === undefined ? unit : (text === "1" && unitsOfOne[name]) || units[name];
      return symbol && beforeUnit + symbol;
    };
    if (by !== undefined) {
      const rounded = value === undefined ? Math.ceil : Math.round;
      const whole = (number: number) => usual.text(rounded(decimal(change(number))));
      return { text: ranges.across(whole(value ?? min ?? 0), whole(by), behind("")), numbers: [] };
    }
    const write = closely ?? (shown === figure ? usual : fine);
    const said = (end: number, rounded?: Rounding): number => {
      const changed = rounded ? decimal(change(end)) : change(end);
      return write.rounded(closely ? changed : asSaid(name, changed, rounded), rounded);
    };
    const numberOf = (end: number, rounded?: Rounding): string => write.text(said(end, rounded));
    const [least, most] = [min ?? value, max ?? value];
    if (least === undefined && most === undefined) return { text: "", numbers: [] };
    if (least === undefined || most === undefined) {
      const end = numberOf(least ?? most ?? 0, least === undefined ? Math.floor : Math.ceil);
      const open = least === undefined ? ranges.atMost : ranges.atLeast;
      return { text: open(end, behind(end)), numbers: [end] };
    }
    if (figure.within && said(least, Math.ceil) > said(most, Math.floor)) {
      const next = closer[closely ? closer.indexOf(closely) + 1 : 0];
      return next ? written(figure, beside, next) : written({ ...figure, within: false }, beside, usual);
    }
    const roundings = roundingsOf(figure);
    const [from, to] = [numberOf(least, roundings[0]), numberOf(most, roundings[1])];
    const text = from === to ? from + behind(from) : ranges.between(from, to, behind(to));
    return { text, numbers: [from, to] };
  };
  return (figure, beside) => {
    if (!figure) return "";
    const { text } = written(figure, beside);
    if (!beside || !areApart(figure, beside)) return text;
    const isTold = (one: Written, other: Written) => !one.numbers.some((end) => other.numbers.includes(end));
    const isToldBy = (closely?: NumberWriter) =>
      isTold(written(figure, beside, closely), written(beside, figure, closely));
    if (isToldBy()) return text;
    return written(figure, beside, closer.find(isToldBy) ?? closer.at(-1)).text;
  };
}

/** A figure as text, and the numbers in it that may read like those of another. */
interface Written {
  readonly text: string;
  readonly numbers: readonly string[];
}

/** Whether no end of a figure is an end of the other. */
const areApart = (one: Figure, other: Figure): boolean =>
  !endsOf(one).some((end) => endsOf(other).includes(end));

const endsOf = ({ value, min, max }: Figure): readonly number[] =>
  [value, min, max].filter((number) => number !== undefined);

type Rounding = (figure: number) => number;

/** How the ends of a figure are rounded where that is not to the nearest. */
function roundingsOf({ within, up, down }: Figure): readonly Rounding[] {
  if (within) return [Math.ceil, Math.floor];
  if (up) return [Math.ceil, Math.ceil];
  return down ? [Math.floor, Math.floor] : [];
}

/**
 * A figure in a unit as closely as people tell it: whole degrees Fahrenheit, whole inches, litres and gallons from ten on,
 * hardness in ppm to tens and weight to two digits from a hundred on.
 */
function asSaid(unit: ShownUnit | undefined, figure: number, rounded: Rounding = Math.round): number {
  if (unit === "degF") return rounded(figure);
  if (unit === "kg" || unit === "lb") return figure < 100 ? figure : toTwoDigits(figure, rounded);
  if (unit === "mg/L-CaCO3") return figure < 100 ? rounded(figure) : rounded(figure / 10) * 10;
  const isRoundFromTen = unit === "in" || unit === "L" || unit === "gal-us" || unit === "gal-imp";
  return isRoundFromTen && Math.abs(figure) >= 10 ? rounded(figure) : figure;
}

/** A figure of a hundred or more to two digits. */
function toTwoDigits(figure: number, rounded: Rounding): number {
  const step = 10 ** (Math.floor(Math.log10(figure)) - 1);
  return rounded(figure / step) * step;
}

/** The floor in cm² from which on floors are told in the larger unit. */
const largeFloor = 10_000;

/** A floor that is large, or stands beside one that is, in m²; any other figure as it is. */
function inFittingUnit(figure: Figure, beside: Figure): Figure {
  const { value, min, max, unit } = figure;
  if (unit !== "cm2" || Math.max(...endsOf(figure), ...endsOf(beside)) < largeFloor) return figure;
  const inM2 = (area: number | undefined) => (area === undefined ? undefined : convert(area, "cm2", "m2"));
  return { value: inM2(value), min: inM2(min), max: inM2(max), unit: "m2" };
}

/** A unit as a reader has it: its symbol, empty for a pure number, and a figure of the canonical unit in it. */
export interface ReadersUnit {
  readonly symbol: string;
  readonly change: (value: number) => number;
}

/** How figures of a canonical unit are shown. Refuses an unknown system. */
export function readersUnit(messages: Messages, system: UnitSystem, unit: string | undefined): ReadersUnit {
  const [name, change] = shownIn(unitsOf(system), unit ?? "");
  return { symbol: name === undefined ? (unit ?? "") : messages.units[name], change };
}

const unitsOf = (system: UnitSystem): Units => systems[oneOf(system, unitSystems, "options.units")];

/** How a canonical unit is shown; one that no system knows as it stands. */
const shownIn = (system: Units, unit: string) =>
  (Object.hasOwn(system, unit) ? system[unit] : undefined) ?? ([undefined, same] as const);

/** Rounds numbers and writes them. */
interface NumberWriter {
  /** To as many digits as are written, as it is said; as it is where nothing is said. Refuses what is no finite number. */
  readonly rounded: (value: number, how?: Rounding) => number;
  /** As text, rounded half up. */
  readonly text: (value: number) => string;
}

/** How a language writes numbers of at most no, one and two decimals. */
const numberFormats = /* @__PURE__ */ onceOfEach((language: string) =>
  [0, 1, 2].map((digits) => new Intl.NumberFormat(language, { maximumFractionDigits: digits })),
);

/** So many decimals below 10, one below 100, none from there on; or at least so many everywhere. */
function numberWriter(language: string, decimals: number, always = 0): NumberWriter {
  const digitsOf = (value: number) => {
    const size = Math.abs(finite(value, "value"));
    if (size < 10) return decimals;
    return Math.max(always, size < 100 ? 1 : 0);
  };
  const formats = numberFormats(language);
  return {
    rounded: (value, how) => {
      const times = 10 ** digitsOf(value);
      return how ? how(decimal(value * times)) / times : value;
    },
    text: (value) => {
      const digits = digitsOf(value);
      const isNothing = Math.abs(value * 10 ** digits) < 0.5;
      return formats[digits]?.format(isNothing ? 0 : value) ?? "";
    },
  };
}
