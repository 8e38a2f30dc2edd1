import { describe, expect, test } from "vitest";
import type { AdultLength } from "../../../src/species";
import { standingValues } from "../../../src/species/inner";

const length = (min: number, max: number, more: Partial<AdultLength> = {}): AdultLength => ({
  length: min,
  measure: "unstated",
  as: "usual",
  total: { min, max },
  ...more,
});
const totals = (values: readonly unknown[]) =>
  (values as readonly (readonly AdultLength[])[]).map((lengths) =>
    lengths.map(({ total, sex }) => [sex, total.min, total.max]),
  );

test("of any trait the adopted value stands first, then every other", () => {
  expect(standingValues("social.living", { value: "shoal", basis: "memory" })).toStrictEqual([["shoal"]]);
  expect(
    standingValues("social.living", { value: "shoal", basis: "memory", also: ["group", "either"] }),
  ).toStrictEqual([["shoal"], ["group"], ["either"]]);
});

describe("lengths stand for themselves", () => {
  const fact = (value: readonly AdultLength[], ...also: (readonly AdultLength[])[]) => ({
    value,
    basis: "published" as const,
    ...(also.length > 0 && { also }),
  });

  test("alone, where they are exact", () => {
    const [value, other] = [[length(4, 4)], [length(5, 5)]];
    expect(standingValues("size.adultLength", fact(value, other))).toStrictEqual([[value], [other]]);
  });

  test("and for both ends of a span, those of each source by themselves", () => {
    const values = standingValues(
      "size.adultLength",
      fact([length(4, 5)], [length(7, 7, { measure: "TL" }), length(3, 4)]),
    );
    expect(values.map(totals)).toStrictEqual([
      [[[undefined, 4, 5]], [[undefined, 4, 4]], [[undefined, 5, 5]]],
      [
        [
          [undefined, 7, 7],
          [undefined, 3, 4],
        ],
        [
          [undefined, 7, 7],
          [undefined, 3, 3],
        ],
        [
          [undefined, 7, 7],
          [undefined, 4, 4],
        ],
      ],
    ]);
  });
});
