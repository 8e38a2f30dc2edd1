import fc from "fast-check";
import { expect, test } from "vitest";
import { mixture } from "../../src/water";
import { expectRefused } from "../refused";

const tap = { generalHardness: 16, carbonateHardness: 12, nitrate: 20 };
const rain = { generalHardness: 0.5, carbonateHardness: 0 };

test("what is dissolved is the mean of the parts by volume", () => {
  expect(
    mixture([
      { amount: 30, water: tap },
      { amount: 10, water: rain },
    ]),
  ).toEqual({
    generalHardness: 12.125,
    carbonateHardness: 9,
  });
});

test("one water alone is itself, and what is not put in does not count", () => {
  expect(mixture([{ amount: 5, water: tap }])).toEqual(tap);
  expect(
    mixture([
      { amount: 5, water: tap },
      { amount: 0, water: {} },
    ]),
  ).toEqual(tap);
});

test("what is unknown of a part is unknown of the whole", () => {
  expect(
    mixture([
      { amount: 1, water: tap },
      { amount: 1, water: {} },
    ]),
  ).toEqual({});
});

test("mixing a mixture is mixing its parts", () => {
  const water = fc.record({ generalHardness: fc.double({ min: 0, max: 40, noNaN: true }) });
  const amount = fc.double({ min: 0.1, max: 100, noNaN: true });
  fc.assert(
    fc.property(water, water, water, amount, amount, amount, (a, b, c, ofA, ofB, ofC) => {
      const [first, second, third] = [
        { amount: ofA, water: a },
        { amount: ofB, water: b },
        { amount: ofC, water: c },
      ];
      const twice = mixture([{ amount: ofA + ofB, water: mixture([first, second]) }, third]);
      expect(twice.generalHardness).toBeCloseTo(mixture([first, second, third]).generalHardness ?? 0, 9);
    }),
  );
});

test("no water, or a figure below zero, is refused", () => {
  expectRefused(() => mixture([]), "parts");
  expectRefused(() => mixture([{ amount: 0, water: tap }]), "parts");
  expectRefused(() => mixture([{ amount: -1, water: tap }]), "parts[0].amount");
  expectRefused(() => mixture([{ amount: 1, water: { nitrate: -1 } }]), "parts[0].water.nitrate");
  // @ts-expect-error: no water
  expectRefused(() => mixture([{ amount: 1 }]), "parts[0].water");
});
