import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { tankGeometry } from "../../../src/tank";
import { measure } from "../numeric";

interface Bowed {
  length: number;
  width: number;
  bow: number;
}

/** Before the back, between the ends, behind the arc. */
function bowedInside({ length, width, bow }: Bowed, glass: number) {
  const radius = (length ** 2 / 4 + bow ** 2) / (2 * bow);
  const centre = width + bow - radius;
  return (x: number, shifted: number) => {
    const y = shifted + (width + bow) / 2;
    const behindArc = y <= centre || Math.hypot(x, y - centre) <= radius - glass;
    return y >= glass && Math.abs(x) <= length / 2 - glass && behindArc;
  };
}

const bases: Bowed[] = [
  { length: 90, width: 35, bow: 12 },
  { length: 60, width: 30, bow: 10 },
  { length: 60, width: 30, bow: 30 },
  { length: 30, width: 80, bow: 5 },
  { length: 100, width: 12, bow: 40 },
  { length: 100, width: 40, bow: 1 },
];
const cases = bases.flatMap((base) => [0, 1.5, 4].map((glass) => ({ ...base, glass })));

describe.each(cases)("$length × $width + $bow behind $glass cm of glass", ({ glass, ...base }) => {
  const found = tankGeometry({ base: { shape: "bowed", ...base }, height: 40, measured: "outer", glass });
  const { area, rectangle } = measure(bowedInside(base, glass), 55);

  // Cells of 0.16 cm: within 1 % of the area, and 0.5 cm of a length.
  test("has the area that counting cells gives", () => {
    expect(Math.abs(found.footprint / area - 1)).toBeLessThan(0.01);
  });

  test("has the smallest rectangle that turning one gives", () => {
    expect(found.longestRun * found.width).toBeLessThan((rectangle.longer + 0.4) * (rectangle.shorter + 0.4));
    expect(Math.abs(found.longestRun - rectangle.longer)).toBeLessThan(0.5);
    expect(Math.abs(found.width - rectangle.shorter)).toBeLessThan(0.5);
  });
});

test("without a bow it is a rectangle, behind any glass", () => {
  const tank = { height: 40, measured: "outer", glass: 1 } as const;
  const flat = tankGeometry({ ...tank, base: { shape: "bowed", length: 90, width: 35, bow: 0 } });
  const straight = tankGeometry({ ...tank, base: { shape: "rectangle", length: 90, width: 35 } });
  for (const [key, value] of Object.entries(straight))
    expect(flat).toHaveProperty(key, expect.closeTo(value, 9));
});

test("a bow adds at least two thirds of its rectangle, and that exactly in the limit of a flat arc", () => {
  // Archimedes, Quadrature of the Parabola: a flat arc is a parabola.
  fc.assert(
    fc.property(fc.double({ min: 1e-12, max: 50, noNaN: true }), (bow) => {
      const { footprint } = tankGeometry({
        base: { shape: "bowed", length: 100, width: 0.01, bow },
        height: 40,
      });
      const share = (footprint - 1) / (100 * bow);
      const allowance = 1e-12 / bow;
      expect(share).toBeGreaterThan(2 / 3 - 1e-9 - allowance);
      expect(share).toBeLessThan((2 / 3) * (1 + (bow / 50) ** 2 / 5) + 1e-9 + allowance);
    }),
  );
});
