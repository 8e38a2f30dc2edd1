import configureMeasurements, { type Converter as Conversion } from "convert-units";
import { finite, refusal } from "../errors";
import { definitions } from "./definitions";
import type { Measure, Unit } from "./unit";

type Converter = (value?: number) => Conversion<Measure, string, Unit, number>;

/** Converts amounts. All measures share it, since no unit id belongs to two of them. */
export const amounts: Converter = /* @__PURE__ */ configureMeasurements<Measure, string, Unit>(definitions);

/** Converts a checked value between checked units. */
export function convertBy(converter: Converter, value: number, from: Unit, to: Unit): number {
  const conversion = converter(finite(value, "value"));
  const measure = knownMeasure(from, "from");
  if (knownMeasure(to, "to") !== measure) {
    throw refusal("to", `a unit of ${measure} (${list(conversion.possibilities(measure))})`, to);
  }
  if (from === to) return value;
  const result = conversion.from(from).to(to);
  if (Number.isFinite(result)) return result;
  throw refusal("value", `a number small enough to express in ${to}`, value);
}

/** The measure of a unit, or an {@link InvalidInputError} where the unit is unknown. */
export function knownMeasure(unit: Unit, subject: string): Measure {
  const known = amounts().getUnit(unit);
  if (known) return known.measure;
  throw refusal(subject, `a unit (${list(amounts().possibilities())})`, unit);
}

const list = (units: readonly Unit[]) => units.join(", ");
