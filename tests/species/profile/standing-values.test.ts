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
  expect(standingValues("social.living", { value: "shoal", basis: "memory" })).toStrictEqual(["shoal"]);
  expect(
    standingValues("social.living", { value: "shoal", basis: "memory", also: ["group", "either"] }),
  ).toStrictEqual(["shoal", "group", "either"]);
});

describe("lengths stand for themselves", () => {
  const fact = (value: readonly AdultLength[], ...also: (readonly AdultLength[])[]) => ({
    value,
    basis: "published" as const,
    ...(also.length > 0 && { also }),
  });

  test("alone, where they are exact and undisputed", () => {
    const value = [length(4, 4)];
    expect(standingValues("size.adultLength", fact(value))).toStrictEqual([value]);
  });

  test("and for both ends of a span", () => {
    expect(totals(standingValues("size.adultLength", fact([length(4, 5)])))).toStrictEqual([
      [[undefined, 4, 5]],
      [[undefined, 4, 4]],
      [[undefined, 5, 5]],
    ]);
  });

  test("and for the shortest and the longest of any source, paired by what was measured, not by place", () => {
    const male = (size: number) => length(size, size, { sex: "male" });
    const female = (size: number) => length(size, size, { sex: "female" });
    const values = standingValues("size.adultLength", fact([male(4), female(6)], [female(8), male(3)]));
    expect(totals(values).slice(1)).toStrictEqual([
      [
        ["male", 3, 3],
        ["female", 6, 6],
      ],
      [
        ["male", 4, 4],
        ["female", 8, 8],
      ],
    ]);
  });

  test("each source by itself, where they did not measure the same", () => {
    const values = standingValues(
      "size.adultLength",
      fact([length(4, 5)], [length(7, 7, { measure: "TL" })]),
    );
    expect(totals(values).slice(1)).toStrictEqual([
      [[undefined, 4, 4]],
      [[undefined, 5, 5]],
      [[undefined, 7, 7]],
      [[undefined, 7, 7]],
    ]);
  });
});
