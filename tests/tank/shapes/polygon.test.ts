import { describe, expect, test } from "vitest";
import { type Corner, maxPolygonCorners, type PolygonBase, tankGeometry } from "../../../src/tank";

const polygon = (points: readonly Corner[], glass = 0, measured: "inner" | "outer" = "outer") =>
  tankGeometry({ base: { shape: "polygon", points }, height: 50, measured, glass });

/** 100 × 80 less 50 × 40 at one corner. */
const ell: Corner[] = [
  [0, 0],
  [100, 0],
  [100, 40],
  [50, 40],
  [50, 80],
  [0, 80],
];

test("glass takes its thickness off every side, round inward corners too", () => {
  // 98 × 78 less 50 × 40: the notch keeps its size and moves with the walls.
  expect(polygon(ell, 1).footprint).toBeCloseTo(98 * 78 - 50 * 40, 9);
});

test("around inner measures the panes stand outside", () => {
  // Outer base 102 × 82 less 50 × 40, 51 high; 2.5 kg/L.
  const { filledMass, waterMass } = polygon(ell, 1, "inner");
  expect(filledMass - waterMass).toBeCloseTo(((102 * 82 - 2000) * 51 - 6000 * 50) * 0.0025, 9);
});

test("a corner on a straight side changes nothing", () => {
  const square = polygon(
    [
      [0, 0],
      [40, 0],
      [40, 40],
      [0, 40],
    ],
    1,
  );
  const split = polygon(
    [
      [0, 0],
      [20, 0],
      [40, 0],
      [40, 40],
      [0, 40],
    ],
    1,
  );
  expect(split).toEqual(square);
});

test("the smallest rectangle may stand askew: a square on its corner", () => {
  const { longestRun, width, footprint } = polygon([
    [0, -30],
    [30, 0],
    [0, 30],
    [-30, 0],
  ]);
  expect(longestRun).toBeCloseTo(30 * Math.SQRT2, 9);
  expect(width).toBeCloseTo(30 * Math.SQRT2, 9);
  expect(footprint).toBeCloseTo(1800, 9);
});

test("around an L the smallest rectangle is 100 × 80", () => {
  expect(polygon(ell)).toMatchObject({ longestRun: 100, width: 80 });
});

test("of equally small rectangles the most nearly square counts: a 3-4-5 triangle", () => {
  // 40 × 30 along the legs, 50 × 24 along the hypotenuse.
  const turned = (angle: number): Corner[] =>
    [
      [0, 0],
      [40, 0],
      [0, 30],
    ].map(([x = 0, y = 0]) => [
      x * Math.cos(angle) - y * Math.sin(angle),
      x * Math.sin(angle) + y * Math.cos(angle),
    ]);
  for (const angle of [0, 0.1, 1, 2, 3]) {
    const { longestRun, width } = polygon(turned(angle));
    expect(longestRun).toBeCloseTo(40, 9);
    expect(width).toBeCloseTo(30, 9);
  }
});

test("a narrow passage that the glass closes is refused", () => {
  const passage: Corner[] = [
    [0, 0],
    [40, 0],
    [40, 18],
    [60, 18],
    [60, 0],
    [100, 0],
    [100, 40],
    [60, 40],
    [60, 22],
    [40, 22],
    [40, 40],
    [0, 40],
  ];
  expect(polygon(passage, 1).footprint).toBeCloseTo(2 * 38 * 38 + 22 * 2, 9);
  expect(() => polygon(passage, 3)).toThrow(/^glass: /);
});

test.each([
  {
    name: "half a square's side",
    points: [
      [0, 0],
      [40, 0],
      [40, 40],
      [0, 40],
    ],
    glass: 20,
  },
  {
    name: "more than half, which turns the square inside out",
    points: [
      [0, 0],
      [40, 0],
      [40, 40],
      [0, 40],
    ],
    glass: 25,
  },
  {
    name: "more than a cut corner leaves",
    points: [
      [0, 0],
      [40, 0],
      [40, 39],
      [39, 40],
      [0, 40],
    ],
    glass: 2,
  },
] satisfies { name: string; points: Corner[]; glass: number }[])(
  "glass of $name is refused",
  ({ points, glass }) => {
    expect(() => polygon(points, glass)).toThrow(/^glass: /);
  },
);

test("far from the origin it measures as well as near, to the last digit", () => {
  const step = 2 ** -30; // so that every sum below is exact, and no product
  const lying = (x: number, y: number) =>
    polygon([
      [x, y],
      [x + 0.25 + 3 * step, y + 5 * step],
      [x + 0.25 + 7 * step, y + 0.125 + 11 * step],
      [x - 13 * step, y + 0.125 + 17 * step],
    ]);
  expect(lying(99_968 + 7 * step, 0)).toEqual(lying(0, 0));
  expect(lying(0, 99_968 + 11 * step)).toEqual(lying(0, 0));
});

describe("the number of corners", () => {
  const ring = (corners: number, radius = 50): Corner[] =>
    Array.from({ length: corners }, (_, index) => {
      const turn = (2 * Math.PI * index) / corners;
      return [radius * Math.cos(turn), radius * Math.sin(turn)];
    });

  test("reaches to the bound: a polygon of as many equal sides has the area n/2 r² sin(2π/n)", () => {
    const n = maxPolygonCorners;
    expect(polygon(ring(n)).footprint).toBeCloseTo((n / 2) * 2500 * Math.sin((2 * Math.PI) / n), 6);
  });

  test.each([
    { corners: ring(2), message: "base.points: expected at least 3 corners, found 2" },
    { corners: ring(201), message: "base.points: expected at most 200 corners, found 201" },
    { corners: ring(8_000), message: "base.points: expected at most 200 corners, found 8000" },
    { corners: ring(1_000_000), message: "base.points: expected at most 200 corners, found 1000000" },
  ])("is refused otherwise: $message", ({ corners, message }) => {
    expect(() => polygon(corners)).toThrow(message);
  });

  test("is counted before a corner is read", () => {
    const corners = Array.from({ length: 201 }, () => "no corner");
    const base: unknown = { shape: "polygon", points: corners };
    const refused = expect.objectContaining({ problems: [expect.objectContaining({ code: "too-many" })] });
    expect(() => tankGeometry({ base: base as PolygonBase, height: 50 })).toThrow(refused);
  });
});
