import { describe, expect, test } from "vitest";
import { InvalidInputError, pathText } from "../../src/errors";
import { type TankDimensions, tankGeometry } from "../../src/tank";

const base = { shape: "rectangle", length: 60, width: 30 };
const rectangle = { base, height: 36 };
const withBase = (changes: object) => ({ ...rectangle, base: { ...base, ...changes } });
const polygon = (points: unknown) => ({ base: { shape: "polygon", points }, height: 36 });
const sector = (angle: unknown) => ({ base: { shape: "sector", radius: 50, angle }, height: 36 });
const bowed = (bow: unknown) => ({ base: { shape: "bowed", length: 60, width: 30, bow }, height: 36 });

const sparse: unknown[] = [[0, 0]];
sparse[2] = [60, 0];

test("outer measures lose the glass twice across and once below", () => {
  const tank = tankGeometry({
    base: { shape: "rectangle", length: 30, width: 60 },
    height: 36,
    measured: "outer",
    glass: 0.5,
    waterBelowRim: 2,
  });
  expect(tank).toEqual({
    grossVolume: 64.8,
    waterVolume: 57.3185,
    footprint: 59 * 29,
    waterSurface: 59 * 29,
    longestRun: 59,
    width: 29,
    waterMass: expect.closeTo(57.3185 * 0.99705, 9),
    filledMass: expect.closeTo(57.3185 * 0.99705 + (64.8 - 60.7405) * 2.5, 9),
  });
});

/** The paths that a refusal names. */
function refusedAt(tank: unknown): readonly string[] {
  try {
    tankGeometry(tank as TankDimensions);
  } catch (error) {
    if (error instanceof InvalidInputError) return error.problems.map(({ path }) => pathText(path));
    throw error;
  }
  return [];
}

test("what is left undefined counts as left out", () => {
  const tank = { base: { shape: "rectangle", length: 60, width: 30 }, height: 36 } as const;
  const left = { unit: undefined, measured: undefined, glass: undefined, waterBelowRim: undefined };
  expect(tankGeometry({ ...tank, ...left })).toEqual(tankGeometry(tank));
});

describe("what cannot be measured is refused, with the path of what is wrong", () => {
  test.each([
    { subject: "base.length", tank: withBase({ length: 0 }) },
    { subject: "base.length", tank: withBase({ length: -60 }) },
    { subject: "base.length", tank: withBase({ length: Number.NaN }) },
    { subject: "base.length", tank: withBase({ length: Number.POSITIVE_INFINITY }) },
    { subject: "base.length", tank: withBase({ length: "60" }) },
    { subject: "base.length", tank: withBase({ length: 1e9 }) },
    { subject: "base.length", tank: withBase({ length: 1e-9 }) },
    { subject: "base.width", tank: withBase({ width: undefined }) },
    { subject: "height", tank: { ...rectangle, height: 0 } },
    { subject: "height", tank: { base } },
    { subject: "base.shape", tank: withBase({ shape: "heptagon" }) },
    { subject: "base.shape", tank: withBase({ shape: "constructor" }) },
    { subject: "base", tank: { height: 36 } },
    { subject: "base", tank: { base: null, height: 36 } },
    { subject: "", tank: undefined },
    { subject: "", tank: null },
    { subject: "", tank: "tank" },
    { subject: "", tank: [rectangle] },
    { subject: "base.length", tank: { ...withBase({ length: 1e308 }), unit: "m" } },
    { subject: "height", tank: { ...rectangle, height: 1e308, unit: "ft" } },
    { subject: "unit", tank: { ...rectangle, unit: null } },
    { subject: "unit", tank: { ...rectangle, unit: "__proto__" } },
    { subject: "measured", tank: { ...rectangle, measured: null } },
    { subject: "waterBelowRim", tank: { ...rectangle, waterBelowRim: "2" } },
    { subject: "unit", tank: { ...rectangle, unit: "cubit" } },
    { subject: "unit", tank: { ...rectangle, unit: "kg" } },
    { subject: "measured", tank: { ...rectangle, measured: "outside" } },
    { subject: "glass", tank: { ...rectangle, glass: -0.5 } },
    { subject: "glass", tank: { ...rectangle, glass: null } },
    { subject: "glass", tank: { ...rectangle, glass: 15, measured: "outer" } },
    {
      subject: "glass",
      tank: { base: { ...base, length: 300, width: 300 }, height: 36, glass: 36, measured: "outer" },
    },
    {
      subject: "glass",
      tank: { base: { shape: "circle", diameter: 40 }, height: 36, glass: 20, measured: "outer" },
    },
    { subject: "glass", tank: { ...sector(60), glass: 17, measured: "outer" } },
    { subject: "glass", tank: { ...bowed(10), glass: 20, measured: "outer" } },
    { subject: "waterBelowRim", tank: { ...rectangle, waterBelowRim: 36 } },
    { subject: "waterBelowRim", tank: { ...rectangle, waterBelowRim: 35.5, glass: 0.5, measured: "outer" } },
    { subject: "waterBelowRim", tank: { ...rectangle, waterBelowRim: -1 } },
    { subject: "base.diameter", tank: { base: { shape: "circle", diameter: 0 }, height: 36 } },
    { subject: "base.radius", tank: { base: { shape: "sector", radius: 0, angle: 90 }, height: 36 } },
    { subject: "base.angle", tank: sector(0) },
    { subject: "base.angle", tank: sector(-90) },
    { subject: "base.angle", tank: sector(360.1) },
    { subject: "base.angle", tank: sector(Number.NaN) },
    { subject: "base.bow", tank: bowed(-1) },
    { subject: "base.bow", tank: bowed(30.1) },
    { subject: "base.bow", tank: bowed(undefined) },
    { subject: "base.points", tank: polygon(undefined) },
    {
      subject: "base.points",
      tank: polygon([
        [0, 0],
        [60, 0],
      ]),
    },
    {
      subject: "base.points",
      tank: polygon([
        [0, 0],
        [60, 30],
        [60, 0],
        [0, 30],
      ]),
    },
    {
      subject: "base.points",
      tank: polygon([
        [0, 0],
        [30, 0],
        [60, 0],
      ]),
    },
    {
      subject: "base.points",
      tank: polygon([
        [0, 0],
        [60, 0],
        [60, 30],
        [0, 0],
      ]),
    },
    {
      subject: "base.points",
      tank: polygon([
        [0, 0],
        [1e-200, 0],
        [0, 1e-200],
      ]),
    },
    {
      subject: "base",
      tank: polygon([
        [0, 0],
        [1e-3, 0],
        [0, 1e-3],
      ]),
    },
    { subject: "base", tank: sector(1e-3) },
    { subject: "base.points[1]", tank: polygon(sparse) },
    { subject: "base.points[1]", tank: polygon([[0, 0], 60, [60, 30]]) },
    {
      subject: "base.points[1]",
      tank: polygon([
        [0, 0],
        [60, 0, 0],
        [60, 30],
      ]),
    },
    {
      subject: "base.points[2][1]",
      tank: polygon([
        [0, 0],
        [60, 0],
        [60, Number.NaN],
      ]),
    },
    {
      subject: "base.points[2][0]",
      tank: polygon([
        [0, 0],
        [60, 0],
        [1e9, 30],
      ]),
    },
  ])("$subject", ({ subject, tank }) => {
    expect(refusedAt(tank)).toEqual([subject]);
  });
});

test("an unknown unit of length is answered with those of length alone", () => {
  // @ts-expect-error: yards are no unit of ours
  expect(() => tankGeometry({ ...rectangle, unit: "yd" })).toThrow(
    'unit: expected one of mm, cm, m, in, ft, found "yd"',
  );
});

test.each([1e-9, 5e-324, 1e-3])("an angle of %d° gives finite numbers or is refused, never NaN", (angle) => {
  for (const glass of [0, 1]) {
    try {
      const tank = tankGeometry({ base: { shape: "sector", radius: 50, angle }, height: 36, glass });
      for (const value of Object.values(tank)) expect(value).toSatisfy(Number.isFinite);
    } catch (error) {
      expect(error).toBeInstanceOf(InvalidInputError);
    }
  }
});

test.each([0, 5e-324, 1e-200, 1e-12])("a bow of %d cm is as good as flat", (bow) => {
  const tank = tankGeometry({
    base: { shape: "bowed", length: 100, width: 40, bow },
    height: 50,
    measured: "outer",
    glass: 1,
  });
  expect(tank.waterVolume).toBeCloseTo((98 * 38 * 49) / 1000, 9);
});
