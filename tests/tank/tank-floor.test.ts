import { expect, test } from "vitest";
import { type BaseDimensions, tankFloor, tankGeometry } from "../../src/tank";

const base = { shape: "rectangle", length: 30, width: 60 } as const;
const given = { footprint: 1800, longestRun: 60, width: 30 };

test("outer measures: the floor lies within the glass", () => {
  expect(tankFloor({ base, measured: "outer", glass: 1 })).toEqual({
    inner: { footprint: 58 * 28, longestRun: 58, width: 28 },
    outer: given,
    nominal: given,
  });
});

test("inner measures: the glass stands around the floor", () => {
  expect(tankFloor({ base, glass: 1 })).toEqual({
    inner: given,
    outer: { footprint: 62 * 32, longestRun: 62, width: 32 },
    nominal: given,
  });
});

test("without glass the three are one", () => {
  expect(tankFloor({ base: { shape: "rectangle", length: 1, width: 2 }, unit: "in" })).toEqual({
    inner: { footprint: 12.9032, longestRun: 5.08, width: 2.54 },
    outer: { footprint: 12.9032, longestRun: 5.08, width: 2.54 },
    nominal: { footprint: 12.9032, longestRun: 5.08, width: 2.54 },
  });
});

test("the inner floor is the one that the geometry of the tank tells", () => {
  const tank = { base: { shape: "sector", radius: 50, angle: 90 }, measured: "outer", glass: 0.8 } as const;
  expect(tankGeometry({ ...tank, height: 40 })).toMatchObject(tankFloor(tank).inner);
});

test("what is wrong is named from the argument on", () => {
  const floorOf = (tank: unknown) => () => tankFloor(tank as BaseDimensions);
  expect(floorOf({ base, glass: 15, measured: "outer" })).toThrow(/^glass: /);
  expect(floorOf({ base: { ...base, width: 0 } })).toThrow(/^base\.width: /);
  expect(floorOf(undefined)).toThrow(/^what was given: expected a plain object, found nothing/);
});
