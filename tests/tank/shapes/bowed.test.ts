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

/** Simpson's rule for a smooth function. */
function integral(of: (x: number) => number, from: number, to: number): number {
  const steps = 2_000;
  const step = (to - from) / steps;
  const weight = (index: number) => (index === 0 || index === steps ? 1 : 2 + 2 * (index % 2));
  const terms = Array.from({ length: steps + 1 }, (_, index) => weight(index) * of(from + index * step));
  return (terms.reduce((sum, term) => sum + term, 0) * step) / 3;
}

/** Area behind glass by adding up strips from the back to the arc, whose centre stays where it was. */
function areaInStrips({ length, width, bow }: Bowed, glass: number): number {
  const radius = (length ** 2 / 4 + bow ** 2) / (2 * bow);
  const toArc = (x: number) => width + bow - radius + Math.sqrt((radius - glass) ** 2 - x ** 2) - glass;
  return integral(toArc, glass - length / 2, length / 2 - glass);
}

// Strips err by some 1e-12 of the area; the arc of 0.499 cm is the steepest that is reckoned by a series.
test.each([
  { length: 100, width: 0.01, bow: 0.499, glass: 0 },
  { length: 100, width: 0.01, bow: 0.501, glass: 0 },
  { length: 100, width: 0.01, bow: 0.2, glass: 0 },
  { length: 90, width: 35, bow: 12, glass: 0 },
  { length: 90, width: 35, bow: 12, glass: 1.5 },
  { length: 60, width: 30, bow: 10, glass: 4 },
  { length: 100, width: 12, bow: 40, glass: 5 },
  { length: 100, width: 40, bow: 1, glass: 10 },
])("$length × $width + $bow behind $glass cm of glass has the area of its strips", ({ glass, ...base }) => {
  const { footprint } = tankGeometry({
    base: { shape: "bowed", ...base },
    height: 40,
    measured: "outer",
    glass,
  });
  expect(Math.abs(footprint / areaInStrips(base, glass) - 1)).toBeLessThan(1e-10);
});
