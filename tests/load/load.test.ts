import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { bodyMass, filterCapacity, nitrogenLoad, oxygenDemand, ration } from "../../src/load";
import * as classes from "../../src/species/classes";

const lengths = fc.double({ min: 0.5, max: 200, noNaN: true });
const masses = fc.double({ min: 0.01, max: 50_000, noNaN: true });
const shapes = fc.constantFrom(...(Object.keys(classes.bodyShape) as (keyof typeof classes.bodyShape)[]));

describe("mass", () => {
  test("lies within its span, grows with length, and the span of an unknown shape holds that of every shape", () => {
    fc.assert(
      fc.property(lengths, shapes, (length, shape) => {
        const [known, unknown, longer] = [{ length, shape }, { length }, { length: length * 1.1, shape }].map(
          bodyMass,
        );
        if (!known || !unknown || !longer) throw new Error("three masses");
        expect(known.typical).toBeGreaterThan(known.likely.min);
        expect(known.typical).toBeLessThan(known.likely.max);
        expect(longer.typical).toBeGreaterThan(known.typical);
        expect(unknown.likely.min).toBeLessThanOrEqual(known.likely.min);
        expect(unknown.likely.max).toBeGreaterThanOrEqual(known.likely.max);
        expect(unknown.typical).toBeGreaterThan(unknown.likely.min);
        expect(unknown.typical).toBeLessThan(unknown.likely.max);
      }),
    );
  });

  test("of a species whose weights are known is one figure, whatever its shape", () => {
    const lengthWeight = { a: 0.012, b: 3.1 };
    const { typical, likely } = bodyMass({ length: 10, shape: "eel-like", lengthWeight });
    expect(typical).toBeCloseTo(0.012 * 10 ** 3.1, 9);
    expect(likely).toEqual({ min: typical, max: typical });
  });
});

test("oxygen use rises from rest to activity, with warmth and with mass, though less than mass does", () => {
  const temperatures = fc.double({ min: 0, max: 38, noNaN: true });
  fc.assert(
    fc.property(masses, temperatures, (mass, temperature) => {
      const { resting, routine, active } = oxygenDemand({ mass, temperature });
      expect(routine).toBeGreaterThan(resting);
      expect(active).toBeGreaterThan(routine);
      expect(oxygenDemand({ mass, temperature: temperature + 1 }).resting).toBeGreaterThan(resting);
      const twice = oxygenDemand({ mass: 2 * mass, temperature }).resting;
      expect(twice).toBeGreaterThan(resting);
      expect(twice).toBeLessThan(2 * resting);
    }),
  );
});

test("food for upkeep is less than plenty, and a smaller share of a larger fish", () => {
  fc.assert(
    fc.property(masses, (mass) => {
      const { min, max } = ration({ mass });
      expect(min).toBeGreaterThan(0);
      expect(max).toBeGreaterThan(min);
      expect(ration({ mass: 2 * mass }).max / (2 * mass)).toBeLessThan(max / mass);
    }),
  );
});

test("warmth raises upkeep, and nowhere above plenty", () => {
  const temperatures = fc.double({ min: 0, max: 39, noNaN: true });
  fc.assert(
    fc.property(masses, temperatures, (mass, temperature) => {
      const [here, warmer] = [ration({ mass, temperature }), ration({ mass, temperature: temperature + 1 })];
      expect(warmer.min).toBeGreaterThan(here.min);
      expect(warmer.max).toBe(here.max);
      expect(warmer.max).toBeGreaterThan(warmer.min);
    }),
  );
  expect(ration({ mass: 1 })).toEqual(ration({ mass: 1, temperature: 27 }));
});

test("nitrogen grows with the food", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1000, noNaN: true }), (food) => {
      expect(nitrogenLoad({ food: food + 1 })).toBeGreaterThan(nitrogenLoad({ food }));
    }),
  );
  expect(nitrogenLoad({ food: 0 })).toBe(0);
});

test("a filter ripens between one week and eight", () => {
  const at = (age: number) => filterCapacity({ mediaArea: 1, age });
  expect(at(6)).toEqual({ min: 0, max: 0 });
  expect(at(7)).toEqual({ min: 0, max: 100 });
  expect(at(55).min).toBe(0);
  expect(at(56)).toEqual({ min: 20, max: 100 });
});

describe("what cannot be", () => {
  const word = (shape: string) => JSON.parse(JSON.stringify(shape));

  test.each([
    ["a length of 0", () => bodyMass({ length: 0 })],
    ["a length that is no number", () => bodyMass({ length: Number.NaN })],
    ["a shape nobody knows", () => bodyMass({ length: 5, shape: word("round") })],
    ["a shape that every object inherits", () => bodyMass({ length: 5, shape: word("constructor") })],
    [
      "a shape nobody knows, beside known constants",
      () => bodyMass({ length: 5, shape: word("round"), lengthWeight: { a: 0.01, b: 3 } }),
    ],
    ["constants that are none", () => bodyMass({ length: 5, lengthWeight: JSON.parse("null") })],
    ["a constant left out", () => bodyMass({ length: 5, lengthWeight: JSON.parse('{ "a": 0.01 }') })],
    ["a constant below 0", () => bodyMass({ length: 5, lengthWeight: { a: -1, b: 3 } })],
    ["a mass of 0", () => oxygenDemand({ mass: 0, temperature: 20 })],
    ["food for nothing", () => ration({ mass: -1 })],
    ["a temperature that is no number", () => ration({ mass: 1, temperature: Number.NaN })],
    ["food without an amount", () => nitrogenLoad({ food: Number.POSITIVE_INFINITY })],
    ["a filter of unknown age", () => filterCapacity({ mediaArea: 1, age: Number.NaN })],
  ])("%s is refused", (_, call) => {
    expect(call).toThrow(InvalidInputError);
  });

  test.each([
    ["water over 40 °C", () => oxygenDemand({ mass: 1, temperature: 40.1 })],
    ["a fish of a kilometre", () => bodyMass({ length: 100_000 })],
    [
      "a fish that grows with the fifth power of its length",
      () => bodyMass({ length: 5, lengthWeight: { a: 0.01, b: 5 } }),
    ],
    ["a fish heavier than its own cube", () => bodyMass({ length: 5, lengthWeight: { a: 1.1, b: 3 } })],
    ["more food than there is", () => nitrogenLoad({ food: 1e308, proteinShare: 1 })],
    ["more media than there are", () => filterCapacity({ mediaArea: 1e308, age: 90 })],
    ["ice", () => oxygenDemand({ mass: 1, temperature: -0.1 })],
    ["a meal in ice", () => ration({ mass: 1, temperature: -0.1 })],
    ["food below 0", () => nitrogenLoad({ food: -1 })],
    ["more protein than food", () => nitrogenLoad({ food: 1, proteinShare: 1.1 })],
    ["media below 0", () => filterCapacity({ mediaArea: -1, age: 60 })],
    ["a filter from the future", () => filterCapacity({ mediaArea: 1, age: -1 })],
  ])("%s lies outside", (_, call) => {
    expect(call).toThrow(OutsideDomainError);
  });
});
