import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import { convert, type Unit } from "../../src/units";
import { runs } from "../runs";
import { convertiblePairs, everyUnit } from "./every-unit";

/** Of either sign or zero, and far from where doubles lose their digits. */
const values = fc
  .tuple(fc.constantFrom(-1, 0, 1), fc.double({ min: 1e-9, max: 1e9, noNaN: true }))
  .map(([sign, size]) => sign * size);

/** Relative 1e-12; temperatures pass an offset of up to 459.67 and keep the rounding of that. */
const tolerance = (value: number, unit: Unit) =>
  1e-12 * Math.max(Math.abs(value), everyUnit.temperature.includes(unit) ? 500 : 0);

describe("definitions, to the last digit", () => {
  // Legal definitions: 1 in = 25.4 mm, 1 ft = 12 in, 1 US gallon = 4 quarts = 231 in³, 1 imperial gallon =
  // 4.54609 L, 1 lb = 16 oz = 0.45359237 kg; BIPM: t/°C = T/K − 273.15. No tolerance.
  test.each([
    [1, "in", "mm", 25.4],
    [1, "in", "cm", 2.54],
    [1, "ft", "in", 12],
    [1, "ft", "m", 0.3048],
    [30.48, "cm", "ft", 1],
    [1, "m2", "cm2", 10_000],
    [1, "L", "mL", 1_000],
    [1, "m3", "L", 1_000],
    [231, "in3", "gal-us", 1],
    [1, "ft3", "in3", 1_728],
    [4, "qt-us", "gal-us", 1],
    [1, "gal-imp", "L", 4.54609],
    [16, "oz", "lb", 1],
    [1, "lb", "kg", 0.45359237],
    [1, "g", "mg", 1_000],
    [212, "degF", "degC", 100],
    [100, "degC", "degF", 212],
    [0, "degC", "K", 273.15],
    [273.15, "K", "degC", 0],
    [-459.67, "degF", "K", 0],
    [0, "K", "degF", -459.67],
    [1, "fH", "mg/L-CaCO3", 10],
    [1, "L/min", "L/h", 60],
    [1, "gal-us/h", "L/h", 3.785411784],
    [1, "ft/s", "cm/s", 30.48],
    [1, "m/s", "cm/s", 100],
    [1, "mS/cm", "uS/cm", 1_000],
    [1, "atm", "kPa", 101.325],
    [1, "kPa", "hPa", 10],
    [760, "mmHg", "hPa", 1013.250144354],
    [1, "a", "d", 365.25],
    [12, "mo", "a", 1],
    [1, "d", "min", 1_440],
    [1, "h", "s", 3_600],
  ] satisfies [number, Unit, Unit, number][])("%d %s in %s is %d", (value, from, to, expected) => {
    expect(convert<Unit>(value, from, to)).toBe(expected);
  });

  test("hardness follows from molar masses", () => {
    // 10 mg/L CaO and CaCO3 of 56.0774 and 100.0872 g/mol; 2 equivalents a mole; relative 1e-15.
    expect(convert(56.0774, "dH", "mmol/L-CaCO3")).toBeCloseTo(10, 13);
    expect(convert(28.0387, "dH", "meq/L")).toBeCloseTo(10, 13);
    expect(convert(100.0872, "fH", "mmol/L-CaCO3")).toBeCloseTo(10, 13);
    // A grain is 64.79891 mg, a seven-thousandth of a pound.
    expect(convert(4.54609, "eH", "mg/L-CaCO3")).toBeCloseTo(64.79891, 12);
    expect(convert(3.785411784, "gpg", "mg/L-CaCO3")).toBeCloseTo(64.79891, 12);
  });
});

describe("for every two units of a measure", () => {
  test("there and back returns the value", () => {
    fc.assert(
      fc.property(values, fc.constantFrom(...convertiblePairs), (value, { from, to }) => {
        const back = convert(convert(value, from, to), to, from);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(tolerance(value, from));
      }),
      { numRuns: runs(2_000) },
    );
  });

  test("a unit on the way changes nothing", () => {
    fc.assert(
      fc.property(
        values,
        fc
          .constantFrom(...Object.values(everyUnit))
          .chain((units) => fc.array(fc.constantFrom(...units), { minLength: 3, maxLength: 3 })),
        (value, [from, by, to]) => {
          if (!from || !by || !to) throw new Error("three units expected");
          const direct = convert(value, from, to);
          const roundabout = convert(convert(value, from, by), by, to);
          expect(Math.abs(roundabout - direct)).toBeLessThanOrEqual(2 * tolerance(direct, to));
        },
      ),
      { numRuns: runs(2_000) },
    );
  });

  test("more stays more", () => {
    fc.assert(
      fc.property(values, values, fc.constantFrom(...convertiblePairs), (a, b, { from, to }) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        expect(convert(low, from, to)).toBeLessThanOrEqual(convert(high, from, to));
      }),
      { numRuns: runs(2_000) },
    );
  });

  test("a unit in itself is the value, untouched", () => {
    fc.assert(
      fc.property(
        fc.double({ noNaN: true, noDefaultInfinity: true }),
        fc.constantFrom(...Object.values(everyUnit).flat()),
        (value, unit) => {
          expect(convert(value, unit, unit)).toBe(value);
        },
      ),
      { examples: [[-0, "cm"]] },
    );
  });
});

describe("no answer", () => {
  const attempt = (value: number, from: string, to: string) => () => convert(value, from as Unit, to as Unit);

  test("for a number as text, which the message tells from a number", () => {
    const text: unknown = "7";
    expect(() => convert(text as number, "cm", "m")).toThrow('value: expected a finite number, found "7"');
  });

  test.each([Number.NaN, Infinity, -Infinity])("for the value %d", (value) => {
    expect(attempt(value, "cm", "m")).toThrow(InvalidInputError);
    expect(attempt(value, "cm", "cm")).toThrow(/^value: expected a finite number/);
  });

  test.each(["", "inch", "CM", "constructor", "__proto__", "toString", "hasOwnProperty"])(
    "for the unit %j, saying which would do",
    (unit) => {
      expect(attempt(1, unit, "cm")).toThrow(InvalidInputError);
      expect(attempt(1, unit, "cm")).toThrow(
        `from: expected a unit of length (mm, cm, m, in, ft), found "${unit}"`,
      );
      expect(attempt(1, "degC", unit)).toThrow(
        `to: expected a unit of temperature (degC, degF, K), found "${unit}"`,
      );
      expect(attempt(1, unit, unit)).toThrow(/^from: expected a unit \(mm, cm, m, in, ft, cm2/);
    },
  );

  test("between measures, saying which units would do", () => {
    expect(attempt(1, "cm", "L")).toThrow(InvalidInputError);
    expect(attempt(1, "cm", "L")).toThrow('to: expected a unit of length (mm, cm, m, in, ft), found "L"');
  });

  test("for every two units of different measures", () => {
    const measures = Object.entries(everyUnit);
    for (const [measure, [from]] of measures) {
      for (const [other, [to]] of measures) {
        if (!from || !to) throw new Error("a measure without units");
        if (measure === other) expect(attempt(1, from, to)()).toBe(1);
        else expect(attempt(1, from, to), `${from} in ${to}`).toThrow(InvalidInputError);
      }
    }
  });

  test("where the result would overflow", () => {
    expect(attempt(1e300, "m3", "mL")).toThrow(InvalidInputError);
    expect(attempt(1e300, "m3", "mL")).toThrow(/^value: expected a number small enough to express in mL/);
  });
});
