import { describe, expect, test } from "vitest";
import { tankGeometry } from "../../../src/tank";
import { measure } from "../numeric";

const radius = 50;

/** Inside the arc and beyond both straight sides; past 180° beyond either, since the sides then turn inward. */
function sectorInside(degrees: number, glass: number) {
  const half = (degrees * Math.PI) / 360;
  return (x: number, y: number) => {
    const fromOne = x * Math.sin(half) - y * Math.cos(half);
    const fromOther = x * Math.sin(half) + y * Math.cos(half);
    const clear = degrees <= 180 ? Math.min(fromOne, fromOther) : Math.max(fromOne, fromOther);
    return clear >= glass && Math.hypot(x, y) <= radius - glass;
  };
}

const angles = [20, 45, 60, 90, 120, 150, 179, 180, 181, 200, 250, 300, 330];
const cases = angles.flatMap((angle) => [0, 1.5, 5].map((glass) => ({ angle, glass })));

describe.each(cases)("a sector of $angle° behind $glass cm of glass", ({ angle, glass }) => {
  const found = tankGeometry({
    base: { shape: "sector", radius, angle },
    height: 40,
    measured: "outer",
    glass,
  });
  const { area, rectangle } = measure(sectorInside(angle, glass), radius);

  // Cells of 0.14 cm: within 1 % of the area, and 0.8 cm of a length (sharp tips fall between cells).
  test("has the area that counting cells gives", () => {
    expect(Math.abs(found.footprint / area - 1)).toBeLessThan(0.01);
  });

  test("has the smallest rectangle that turning one gives", () => {
    expect(found.longestRun * found.width).toBeLessThan((rectangle.longer + 0.4) * (rectangle.shorter + 0.4));
    expect(Math.abs(found.longestRun - rectangle.longer)).toBeLessThan(0.8);
    expect(Math.abs(found.width - rectangle.shorter)).toBeLessThan(0.8);
  });
});

test("a sector of 360° is a circle", () => {
  const tank = { height: 40, measured: "outer", glass: 1 } as const;
  const round = tankGeometry({ ...tank, base: { shape: "circle", diameter: 2 * radius } });
  expect(tankGeometry({ ...tank, base: { shape: "sector", radius, angle: 360 } })).toEqual(round);
});
