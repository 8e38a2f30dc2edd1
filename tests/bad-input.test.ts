import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InvalidInputError, OutsideDomainError } from "../src/errors";
import * as load from "../src/load";
import * as ranges from "../src/ranges";
import * as tank from "../src/tank";
import * as units from "../src/units";
import * as water from "../src/water";
import { expectRefused } from "./refused";
import { runs } from "./runs";

type AnyFunction = (...args: readonly unknown[]) => unknown;

const exported: readonly (readonly [string, unknown])[] = Object.entries({
  ...ranges,
  ...units,
  ...tank,
  ...water,
  ...load,
});
const isFunction = (entry: readonly [string, unknown]): entry is [string, AnyFunction] =>
  typeof entry[1] === "function";
const functions = exported.filter(isFunction);
const tables = exported.filter((entry) => !isFunction(entry));

const range = { min: 20, max: 26 };
const columns = { ids: ["danio-rerio"], min: Float64Array.of(20), max: Float64Array.of(26) };
const rectangle = { shape: "rectangle", length: 60, width: 30 };
const polygon = {
  shape: "polygon",
  points: [
    [0, 0],
    [60, 0],
    [60, 30],
  ],
};
const glass = { height: 36, unit: "cm", measured: "outer", glass: 0.5, waterBelowRim: 2 };

/** Arguments that each function answers to, for every way of calling it. */
const goodArguments: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
  overlap: [[range, range, { min: 22 }]],
  gap: [[{ max: 20 }, { min: 22 }]],
  contains: [
    [range, range],
    [range, 22],
  ],
  width: [[range]],
  jaccard: [[range, range]],
  simpson: [[range, range]],
  sorensen: [[range, range]],
  containment: [[range, range]],
  schoener: [[range, range]],
  pianka: [[range, range]],
  limitingPair: [
    [[range, { min: 22 }, range]],
    [[{ range }, { range }], (item: { range: unknown }) => item?.range],
  ],
  rangeColumns: [[[{ id: "danio-rerio", water: { pH: { value: { kept: range } } } }], "water.pH"]],
  sharing: [[columns, range]],
  pairsThatShare: [[columns]],
  ordinalOverlap: [[["still", "gentle", "strong"], { min: "still" }, { min: "gentle", max: "strong" }]],
  convert: [
    [7, "degC", "degF"],
    [7, "ft", "cm"],
  ],
  convertDifference: [[7, "degC", "degF"]],
  measureOf: [["cm"]],
  unitsOf: [["length"]],
  lengthInCm: [[24, "in", "height"]],
  tankFloor: [[{ base: rectangle, ...glass }], [{ base: polygon, ...glass }]],
  tankGeometry: [
    [{ base: rectangle, ...glass }],
    [{ base: polygon, ...glass }],
    [{ base: { shape: "circle", diameter: 40 }, ...glass }],
    [{ base: { shape: "sector", radius: 40, angle: 90 }, ...glass }],
    [{ base: { shape: "bowed", length: 60, width: 30, bow: 10 }, ...glass }],
  ],
  oxygenSaturation: [[{ temperature: 25, salinity: 5, pressure: 100 }]],
  carbonDioxide: [[{ temperature: 25, pH: 7, carbonateHardness: 4 }]],
  unionizedAmmoniaFraction: [[{ temperature: 25, pH: 7 }]],
  waterDensity: [[{ temperature: 25, salinity: 5 }]],
  mixture: [[[{ amount: 1, water: { generalHardness: 8, carbonateHardness: 6, nitrate: 20 } }]]],
  bodyMass: [
    [{ length: 5, shape: "fusiform" }],
    [{ length: 5, shape: "elongated", lengthWeight: { a: 0.01, b: 3 } }],
  ],
  oxygenDemand: [[{ mass: 1, temperature: 25 }]],
  nitrogenLoad: [[{ food: 1, proteinShare: 0.4 }]],
  ration: [[{ mass: 1, temperature: 25 }]],
  filterCapacity: [[{ mediaArea: 2, age: 60 }]],
};

const sparse: unknown[] = [];
sparse[2] = range;

/** What a caller without types may pass by mistake. */
const hostile = fc.oneof(
  fc.constantFrom<unknown>(
    undefined,
    null,
    Number.NaN,
    Infinity,
    -Infinity,
    1e308,
    -1e308,
    5e-324,
    -0,
    0,
    -1,
    0.5,
    1e9,
    360,
    7n,
    "",
    "7",
    "cm",
    "yd",
    "__proto__",
    "constructor",
    "toString",
    "rectangle",
    true,
    false,
    Symbol("7"),
    [],
    {},
    sparse,
    [undefined],
    [null],
    [[]],
    Object.create(null),
    new Date(0),
    new Map(),
    () => 7,
    { min: 7 },
    { min: 8, max: 7 },
    { min: Number.NaN },
    { min: -1e308, max: 1e308 },
    { shape: "constructor" },
  ),
  fc.double(),
  fc.string(),
  fc.anything(),
);

/** The places in an argument where something else can stand, each as a path; the first is the argument itself. */
function places(value: unknown, path: readonly string[] = []): readonly (readonly string[])[] {
  const inner = typeof value === "object" && value !== null ? Object.entries(value) : [];
  return [path, ...inner.flatMap(([key, held]) => places(held, [...path, key]))];
}

/** A copy of an argument with something else in one place. */
function withInstead(value: unknown, [key, ...rest]: readonly string[], instead: unknown): unknown {
  if (key === undefined) return instead;
  const changed = (held: unknown) => withInstead(held, rest, instead);
  if (Array.isArray(value)) return value.map((held, index) => (String(index) === key ? changed(held) : held));
  const object: Readonly<Record<string, unknown>> = Object(value);
  return { ...object, [key]: changed(object[key]) };
}

/** Numbers that are none, anywhere in a result; columns hold an open end as infinite. */
function nonFinite(value: unknown): readonly unknown[] {
  if (value instanceof Float64Array) return [...value.filter(Number.isNaN)];
  if (typeof value === "number") return Number.isFinite(value) ? [] : [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(nonFinite) : [];
}

/** Calls, and complains of any end but a finite answer or an error of the library's own. */
function expectAnswerOrRefusal(call: AnyFunction, args: readonly unknown[]): void {
  try {
    expect(nonFinite(call(...args))).toEqual([]);
  } catch (error) {
    if (!(error instanceof InvalidInputError || error instanceof OutsideDomainError)) throw error;
    expect(error.message.length).toBeLessThan(1_000);
  }
}

test("every function has arguments to be tried with", () => {
  expect(Object.keys(goodArguments).sort()).toEqual(functions.map(([name]) => name).sort());
});

describe.each(functions)("%s", (name, call) => {
  const good = goodArguments[name] ?? [];

  test("answers what it should", () => {
    for (const args of good) expect(nonFinite(call(...args))).toEqual([]);
  });

  test("refuses nothing at all", () => {
    expect(() => call()).toThrow(InvalidInputError);
  });

  test("answers with finite numbers, or refuses, whatever it is given", () => {
    fc.assert(
      fc.property(fc.array(hostile, { maxLength: 4 }), (args) => expectAnswerOrRefusal(call, args)),
      { numRuns: runs(300) },
    );
  });

  test("answers with finite numbers, or refuses, whatever stands in one place of good arguments", () => {
    const changed = fc.constantFrom(...good).chain((args) => {
      const inAll = args.flatMap((arg, index) => places(arg).map((path) => ({ args, index, path })));
      return fc.tuple(fc.constantFrom(...inAll), hostile);
    });
    fc.assert(
      fc.property(changed, ([{ args, index, path }, instead]) => {
        const mistaken = args.map((arg, at) => (at === index ? withInstead(arg, path, instead) : arg));
        expectAnswerOrRefusal(call, mistaken);
      }),
      { numRuns: runs(1_000) },
    );
  });
});

describe.each(tables)("%s", (_, table) => {
  /** Everything in a table that can be changed. */
  const open = (value: unknown): readonly unknown[] =>
    typeof value === "object" && value !== null
      ? [...(Object.isFrozen(value) ? [] : [value]), ...Object.values(value).flatMap(open)]
      : [];

  test("cannot be changed", () => {
    expect(open(table)).toEqual([]);
  });
});

test("no one can widen a range of validity", () => {
  const { temperature }: { temperature: { max: number } } = water.oxygenDomain;
  expect(() => {
    temperature.max = 1_000;
  }).toThrow(TypeError);
  expect(() => water.oxygenSaturation({ temperature: 500 })).toThrow(OutsideDomainError);
});

describe("a misspelt field is refused where it would say nothing", () => {
  test.each([
    ["shpe", () => load.bodyMass({ length: 5, shpe: "eel-like" } as never)],
    ["temprature", () => load.ration({ mass: 1, temprature: 20 } as never)],
    ["masss", () => load.oxygenDemand({ mass: 1, temperature: 20, masss: 2 } as never)],
    ["proteinshare", () => load.nitrogenLoad({ food: 1, proteinshare: 0.3 } as never)],
    ["days", () => load.filterCapacity({ mediaArea: 1, age: 60, days: 60 } as never)],
  ])("%s", (name, call) => {
    expectRefused(call, name);
  });
});
