import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InvalidInputError, OutsideDomainError } from "../../src/errors";
import { type BodyMassInput, bodyMass, bodyMassDomain } from "../../src/load";

const lengths = fc.double({ min: 0.5, max: 200, noNaN: true });
const shapes = fc.constantFrom("eel-like", "elongated", "fusiform", "short-deep");

test("lies within its span, grows with length, and the span of an unknown shape holds that of every shape", () => {
  fc.assert(
    fc.property(lengths, shapes, (length, shape) => {
      const known = bodyMass({ length, shape });
      const unknown = bodyMass({ length });
      const longer = bodyMass({ length: length * 1.1, shape });
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

test("holds at the ends of its domain", () => {
  for (const length of Object.values(bodyMassDomain.length)) {
    for (const a of Object.values(bodyMassDomain.lengthWeight.a)) {
      for (const b of Object.values(bodyMassDomain.lengthWeight.b)) {
        expect(bodyMass({ length, lengthWeight: { a, b } }).typical).toBeGreaterThan(0);
      }
    }
  }
});

describe("what cannot be", () => {
  const good = { length: 5, lengthWeight: { a: 0.01, b: 3 } };

  test.each([
    [{ ...good, length: 0 }, "length: expected a number above zero, found 0"],
    [{ ...good, length: Number.NaN }, "length: expected a finite number, found NaN"],
    [
      { ...good, shape: "round" },
      'shape: expected one of eel-like, elongated, fusiform, short-deep, found "round"',
    ],
    [{ length: 5, shape: "constructor" }, "shape: expected one of"],
    [{ ...good, lengthWeight: null }, "lengthWeight: expected a plain object, found null"],
    [{ ...good, lengthWeight: { a: 0.01 } }, "lengthWeight.b: expected a finite number, found nothing"],
    [{ ...good, lengthWeight: { a: -1, b: 3 } }, "lengthWeight.a: expected a number above zero, found -1"],
    [undefined, "what was given: expected a plain object, found nothing"],
  ])("%j is refused", (fish, message) => {
    const call = () => bodyMass(fish as BodyMassInput);
    expect(call).toThrow(InvalidInputError);
    expect(call).toThrow(message);
  });

  test.each([
    [{ ...good, length: 100_000 }, "length: holds from 0.1 to 1000 cm, found 100000 cm"],
    [{ ...good, lengthWeight: { a: 1.1, b: 3 } }, "lengthWeight.a: holds from 0.0001 to 1, found 1.1"],
    [{ ...good, lengthWeight: { a: 0.01, b: 200 } }, "lengthWeight.b: holds from 2 to 4, found 200"],
  ])("%j lies outside", (fish, message) => {
    expect(() => bodyMass(fish)).toThrow(OutsideDomainError);
    expect(() => bodyMass(fish)).toThrow(message);
  });
});
