import configureMeasurements, { type Converter as Conversion } from "convert-units";
import { finite } from "../checks";
import { refusal } from "../errors";
import { once } from "../made-once";
import { definitions } from "./definitions";
import type { Measure, Unit } from "./unit";

type Converter = (value?: number) => Conversion<Measure, string, Unit, number>;

/** Converts by definitions, which are made when they are first needed. */
export function converterBy(table: () => typeof definitions): Converter {
  const configured = once(() => {
    const made = Object.entries(table()).map(([measure, make]) => [measure, make()]);
    return configureMeasurements<Measure, string, Unit>(Object.fromEntries(made));
  });
  return (value) => configured()(value);
}

/** Converts amounts. All measures share it, since no unit id belongs to two of them. */
export const amounts = /* @__PURE__ */ converterBy(() => definitions);

/** Converts a checked value between checked units. */
export function convertBy(converter: Converter, value: number, from: Unit, to: Unit): number {
  const result = converted(converter(finite(value, "value")), from, to);
  if (from === to) return value;
  if (Number.isFinite(result)) return result;
  throw refusal("value", `a number small enough to express in ${to}`, value, "range");
}

/** What comes of it in the other unit. What is wrong with the units is looked up only where they do not convert. */
function converted(conversion: ReturnType<Converter>, from: Unit, to: Unit): number {
  try {
    return conversion.from(from).to(to);
  } catch {
    const measure = conversion.getUnit(from)?.measure;
    if (measure) throw refusal("to", unitsFor(measure), to, "word");
    throw refusal("from", unitsFor(conversion.getUnit(to)?.measure), from, "word");
  }
}

/** The measure of a unit; `undefined` of what is none. */
export function measureIfKnown(unit: Unit): Measure | undefined {
  return amounts().getUnit(unit)?.measure;
}

/** The units that would do, in words: of one measure, or of all where none is known. */
export function unitsFor(measure: Measure | undefined): string {
  const units = amounts().possibilities(measure).join(", ");
  return measure ? `a unit of ${measure} (${units})` : `a unit (${units})`;
}
