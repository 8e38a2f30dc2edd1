import { describe, expect, test } from "vitest";
import type { Range } from "../../src/ranges";
import type { SpeciesProfile } from "../../src/species";
import { type OverlapMeasure, overlapRows } from "../../src/tables";

/** A species that uses a box of temperature and pH evenly. */
function user(id: string, temperature: Range, pH: Range): SpeciesProfile {
  const held = (kept: Range) => ({ value: { kept }, basis: "published" }) as const;
  const taxonomy = { name: id, authority: "", family: "", order: "", kind: "fish" } as const;
  return { id, taxonomy, names: {}, water: { temperature: held(temperature), pH: held(pH) } };
}

/** How much of each small state of a grid a species uses, row by row: of temperatures in tenths, of pH in hundredths. */
function utilisation(temperature: Range, pH: Range): readonly number[] {
  const along = ({ min, max }: Range, from: number, count: number, step: number) =>
    Array.from({ length: count }, (_, index) => {
      const middle = from + (index + 0.5) * step;
      return middle > min && middle < max ? 1 : 0;
    });
  const across = along(pH, 5, 400, 0.01);
  const used = along(temperature, 15, 200, 0.1).flatMap((row) => across.map((cell) => row * cell));
  const total = used.reduce((sum: number, cell) => sum + cell, 0);
  return used.map((cell) => cell / total);
}

const boxes: readonly (readonly [string, readonly [Range, Range], readonly [Range, Range]])[] = [
  [
    "partly over each other",
    [
      { min: 20, max: 26 },
      { min: 6, max: 7.5 },
    ],
    [
      { min: 24, max: 30 },
      { min: 7, max: 8.2 },
    ],
  ],
  [
    "one within the other",
    [
      { min: 18, max: 28 },
      { min: 5.5, max: 8 },
    ],
    [
      { min: 22, max: 25 },
      { min: 6.4, max: 7.1 },
    ],
  ],
  [
    "across each other",
    [
      { min: 18, max: 30 },
      { min: 6.5, max: 7 },
    ],
    [
      { min: 24, max: 26 },
      { min: 5.5, max: 8 },
    ],
  ],
  [
    "apart on one axis",
    [
      { min: 18, max: 30 },
      { min: 5.5, max: 6 },
    ],
    [
      { min: 20, max: 26 },
      { min: 7, max: 8 },
    ],
  ],
];

// The ends lie on the grid, so that sums and integrals agree but for rounding.
describe.each(boxes)("boxes %s, by the published sums over a grid of states", (_, a, b) => {
  const p = utilisation(...a);
  const q = utilisation(...b);
  const rows = overlapRows([user("a", ...a), user("b", ...b)], {
    axes: ["water.temperature", "water.pH"],
    measures: ["schoener", "pianka", "jaccard", "sorensen", "simpson", "containment"],
  });
  const told = (measure: OverlapMeasure) =>
    rows.find((row) => row.axis === "box" && row.measure === measure && row.taxonID === "a")?.value;
  const sum = (term: (p: number, q: number) => number) =>
    p.reduce((total, share, index) => total + term(share, q[index] ?? Number.NaN), 0);
  const count = (used: (p: number, q: number) => boolean) => sum((x, y) => Number(used(x, y)));
  const [first, second, both] = [
    count((x) => x > 0),
    count((_, y) => y > 0),
    count((x, y) => x > 0 && y > 0),
  ];

  test("Schoener: D = 1 − ½ Σ|p − q|", () => {
    expect(told("schoener")).toBeCloseTo(1 - sum((x, y) => Math.abs(x - y)) / 2, 9);
  });

  test("coefficient of overlapping: Σ min(p, q)", () => {
    expect(told("schoener")).toBeCloseTo(sum(Math.min), 9);
  });

  test("Pianka: O = Σpq / √(Σp² Σq²)", () => {
    const squares = sum((x) => x * x) * sum((_, y) => y * y);
    expect(told("pianka")).toBeCloseTo(sum((x, y) => x * y) / Math.sqrt(squares), 9);
  });

  test("Jaccard, Sørensen, Simpson and containment, by counts of states", () => {
    expect(told("jaccard")).toBeCloseTo(both / (first + second - both), 9);
    expect(told("sorensen")).toBeCloseTo((2 * both) / (first + second), 9);
    expect(told("simpson")).toBeCloseTo(both / Math.min(first, second), 9);
    expect(told("containment")).toBeCloseTo(both / first, 9);
  });
});
