import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import {
  type Corner,
  type TankBase,
  type TankDimensions,
  type TankGeometry,
  tankGeometry,
} from "../../src/tank";

const length = fc.double({ min: 10, max: 300, noNaN: true });
const angle = fc.double({ min: 5, max: 340, noNaN: true });

const rectangle: fc.Arbitrary<TankBase> = fc.record({
  shape: fc.constant("rectangle"),
  length,
  width: length,
});
const circle: fc.Arbitrary<TankBase> = fc.record({ shape: fc.constant("circle"), diameter: length });
const sector: fc.Arbitrary<TankBase> = fc.record({ shape: fc.constant("sector"), radius: length, angle });
const bowed: fc.Arbitrary<TankBase> = fc
  .tuple(length, length, fc.double({ min: 0, max: 0.5, noNaN: true }))
  .map(([l, w, share]) => ({ shape: "bowed", length: l, width: w, bow: share * l }));

/** Corners at even angles around a middle, so that no two sides cross. */
const star: fc.Arbitrary<Corner[]> = fc.array(length, { minLength: 3, maxLength: 9 }).map((radii) =>
  radii.map((radius, index) => {
    const turn = (2 * Math.PI * index) / radii.length;
    return [radius * Math.cos(turn), radius * Math.sin(turn)];
  }),
);
const polygon: fc.Arbitrary<TankBase> = star.map((points) => ({ shape: "polygon", points }));
const anyBase = fc.oneof(rectangle, circle, sector, bowed, polygon);

function expectSame(found: TankGeometry, expected: TankGeometry) {
  for (const [key, value] of Object.entries(expected)) {
    const given = Object.entries(found).find(([name]) => name === key)?.[1] ?? Number.NaN;
    expect(Math.abs(given - value), key).toBeLessThanOrEqual(1e-7 * Math.abs(value));
  }
}

/** Litres of water; none where the tank is refused. */
function water(tank: TankDimensions): number {
  try {
    return tankGeometry(tank).waterVolume;
  } catch (error) {
    expect(error).toBeInstanceOf(InvalidInputError);
    return 0;
  }
}

describe("any tank", () => {
  test("fits into its rectangle, and its run is not shorter than its width", () => {
    fc.assert(
      fc.property(anyBase, length, (base, height) => {
        const tank = tankGeometry({ base, height });
        expect(tank.longestRun).toBeGreaterThanOrEqual(tank.width);
        expect(tank.footprint).toBeLessThanOrEqual(tank.longestRun * tank.width * (1 + 1e-12));
        expect(tank.footprint).toBeGreaterThan(0);
      }),
    );
  });

  test("measured inside, holds its gross volume up to the rim and weighs what its water weighs", () => {
    fc.assert(
      fc.property(anyBase, length, (base, height) => {
        const tank = tankGeometry({ base, height });
        expect(tank.waterVolume).toBe(tank.grossVolume);
        expect(tank.waterSurface).toBe(tank.footprint);
        expect(tank.filledMass).toBe(tank.waterMass);
      }),
    );
  });

  test("never holds more water behind thicker glass", () => {
    const glass = fc.double({ min: 0, max: 6, noNaN: true });
    fc.assert(
      fc.property(anyBase, length, glass, glass, (base, height, a, b) => {
        const behind = (thickness: number) => water({ base, height, measured: "outer", glass: thickness });
        expect(behind(Math.max(a, b))).toBeLessThanOrEqual(behind(Math.min(a, b)) * (1 + 1e-12));
      }),
    );
  });

  test("never weighs less around thicker glass", () => {
    fc.assert(
      fc.property(
        fc.oneof(rectangle, circle, bowed),
        length,
        fc.double({ min: 0, max: 5, noNaN: true }),
        (base, height, glass) => {
          const around = (thickness: number) => tankGeometry({ base, height, glass: thickness }).filledMass;
          expect(around(glass + 0.1)).toBeGreaterThan(around(glass));
        },
      ),
    );
  });

  test("never holds more water with more room below the rim", () => {
    const gap = fc.double({ min: 0, max: 9.9, noNaN: true });
    fc.assert(
      fc.property(anyBase, length, gap, gap, (base, height, a, b) => {
        const below = (waterBelowRim: number) => water({ base, height, waterBelowRim });
        expect(below(Math.max(a, b))).toBeLessThanOrEqual(below(Math.min(a, b)));
        expect(below(Math.max(a, b))).toBeGreaterThan(0);
      }),
    );
  });

  test("loses as much inside as its panes take: outer measures and the inner ones they leave agree", () => {
    fc.assert(
      fc.property(
        length,
        length,
        length,
        fc.double({ min: 0, max: 3, noNaN: true }),
        (l, w, height, glass) => {
          const outer = tankGeometry({
            base: { shape: "rectangle", length: l, width: w },
            height,
            measured: "outer",
            glass,
          });
          const inside = { shape: "rectangle", length: l - 2 * glass, width: w - 2 * glass } as const;
          const inner = tankGeometry({ base: inside, height: height - glass, glass });
          expectSame({ ...inner, grossVolume: outer.grossVolume }, outer);
        },
      ),
    );
  });
});

describe("units", () => {
  test("inches and centimetres of the same tank agree", () => {
    const scaled = (base: TankBase): TankBase => {
      const by = (value: number) => value * 2.54;
      switch (base.shape) {
        case "rectangle":
          return { ...base, length: by(base.length), width: by(base.width) };
        case "circle":
          return { ...base, diameter: by(base.diameter) };
        case "sector":
          return { ...base, radius: by(base.radius) };
        case "bowed":
          return { ...base, length: by(base.length), width: by(base.width), bow: by(base.length) / 4 };
        case "polygon":
          return { ...base, points: base.points.map(([x, y]) => [by(x), by(y)]) };
      }
    };
    fc.assert(
      fc.property(anyBase, length, (given, height) => {
        const base = given.shape === "bowed" ? { ...given, bow: given.length / 4 } : given;
        const lengths = { height, glass: 0.1, waterBelowRim: 1 };
        const inches = tankGeometry({ base, ...lengths, unit: "in" });
        const cm = tankGeometry({
          base: scaled(base),
          height: 2.54 * height,
          glass: 0.254,
          waterBelowRim: 2.54,
          unit: "cm",
        });
        expectSame(inches, cm);
      }),
    );
  });

  test.each([
    { unit: "mm", scale: 10 },
    { unit: "cm", scale: 1 },
    { unit: "m", scale: 0.01 },
    { unit: "in", scale: 1 / 2.54 },
    { unit: "ft", scale: 1 / 30.48 },
  ] as const)("60 × 30 × 36 cm in $unit", ({ unit, scale }) => {
    const base = { shape: "rectangle", length: 60 * scale, width: 30 * scale } as const;
    const tank = tankGeometry({ base, height: 36 * scale, unit });
    expect(tank.grossVolume).toBeCloseTo(64.8, 9);
    expect(tank.footprint).toBeCloseTo(1800, 9);
    expect(tank.longestRun).toBeCloseTo(60, 9);
    expect(tank.width).toBeCloseTo(30, 9);
  });
});

describe("polygons", () => {
  test("with four right angles equal the rectangle", () => {
    fc.assert(
      fc.property(
        length,
        length,
        length,
        fc.double({ min: 0, max: 3, noNaN: true }),
        (l, w, height, glass) => {
          const points: Corner[] = [
            [0, 0],
            [l, 0],
            [l, w],
            [0, w],
          ];
          const rest = { height, measured: "outer", glass } as const;
          expectSame(
            tankGeometry({ base: { shape: "polygon", points }, ...rest }),
            tankGeometry({ base: { shape: "rectangle", length: l, width: w }, ...rest }),
          );
        },
      ),
    );
  });

  test("measure the same wherever they lie, however they are turned, and either way round", () => {
    const shift = fc.double({ min: -500, max: 500, noNaN: true });
    fc.assert(
      fc.property(star, shift, shift, angle, fc.boolean(), (points, dx, dy, degrees, reversed) => {
        const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
        const moved = points.map(([x, y]): Corner => [x * cos - y * sin + dx, x * sin + y * cos + dy]);
        const placed = reversed ? moved.reverse() : moved;
        expectSame(
          tankGeometry({ base: { shape: "polygon", points: placed }, height: 40 }),
          tankGeometry({ base: { shape: "polygon", points }, height: 40 }),
        );
      }),
    );
  });

  test("are not changed", () => {
    const points: Corner[] = [
      [0, 0],
      [0, 30],
      [60, 30],
      [60, 0],
    ]; // clockwise
    const copy = structuredClone(points);
    tankGeometry({ base: { shape: "polygon", points: Object.freeze(points) }, height: 40 });
    expect(points).toEqual(copy);
  });
});
