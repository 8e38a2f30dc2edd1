import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { resolve, type TraitStatement } from "../../../src/species";
import { recordOf } from "../records";

type Temperature = TraitStatement<"water.temperature">;

const trade = "common-practice";
const temperatureOf = (...temperature: Temperature[]) =>
  resolve(recordOf({ water: { temperature } })).water?.temperature;
const limit = (by: string, value: Temperature["value"], more: Partial<Temperature> = {}): Temperature => ({
  by,
  value,
  as: "limit",
  endpoint: "balance",
  ...more,
});
const kept: Temperature = { by: trade, value: { min: 20, max: 26 }, as: "kept" };

describe("the end that a source leaves open", () => {
  test("is that of the next best source, and the span rests on both", () => {
    const fact = temperatureOf(
      { by: "study", value: { min: 20 }, as: "kept" },
      { by: "handbook", value: { min: 18, max: 26 }, as: "kept" },
    );
    expect(fact).toStrictEqual({
      value: { kept: { min: 20, max: 26 } },
      basis: "memory",
      said: ["study", "handbook"],
      also: [{ kept: { min: 18, max: 26 } }],
    });
  });

  test("is that of the best of several, not of the nearest line", () => {
    const fact = temperatureOf(
      { by: "study", value: { min: 20 }, as: "kept" },
      { by: trade, value: { max: 30 }, as: "kept" },
      { by: "handbook", value: { max: 26 }, as: "kept" },
    );
    expect(fact?.value.kept).toStrictEqual({ min: 20, max: 26 });
    expect(fact?.said).toStrictEqual(["study", "handbook"]);
  });

  test("stays open where nobody states it", () => {
    expect(temperatureOf({ by: "study", value: { min: 20 }, as: "kept" })?.value.kept).toStrictEqual({
      min: 20,
    });
  });

  test("stays open where it would lie below the other end", () => {
    const fact = temperatureOf(
      { by: "study", value: { min: 24 }, as: "kept" },
      { by: "handbook", value: { max: 22 }, as: "kept" },
    );
    expect(fact?.value.kept).toStrictEqual({ min: 24 });
    expect(fact?.also).toStrictEqual([{ kept: { max: 22 } }]);
  });

  test("is not taken from figures of another meaning or stage", () => {
    const fact = temperatureOf(
      { by: "study", value: { min: 20 }, as: "kept" },
      { by: "study", value: { max: 34 }, as: "wild" },
      { by: "study", value: { max: 30 }, as: "kept", stage: "fry" },
    );
    expect(fact?.value).toStrictEqual({ kept: { min: 20 }, wild: { max: 34 } });
  });
});

describe("limits of animals that were used to different temperatures", () => {
  const cold = limit("study", { min: 8 }, { acclimatedAt: 20 });

  test("make no span: no animal has both", () => {
    const warm = limit("survey", { max: 40 }, { acclimatedAt: 32 });
    expect(temperatureOf(kept, cold, warm)?.value.limit).toStrictEqual({ min: 8 });
  });

  test("make one where they were used to the same, or one of them does not say", () => {
    for (const more of [{ acclimatedAt: 20 }, {}]) {
      const warm = limit("survey", { max: 38 }, more);
      expect(temperatureOf(kept, cold, warm)?.value.limit).toStrictEqual({ min: 8, max: 38 });
    }
  });

  test("give way to a later source that fits", () => {
    const warm = limit("survey", { max: 40 }, { acclimatedAt: 32 });
    const alike = limit("handbook", { max: 37 }, { acclimatedAt: 20 });
    expect(temperatureOf(kept, cold, warm, alike)?.value.limit).toStrictEqual({ min: 8, max: 37 });
  });
});

describe("an end that is the bound of a handbook's class", () => {
  const pHOf = (...pH: TraitStatement<"water.pH">[]) => resolve(recordOf({ water: { pH } })).water?.pH?.value;

  test("says so, each end for itself", () => {
    expect(pHOf({ by: "study", value: { min: 6, max: 8 }, as: "kept", precision: "class" })).toStrictEqual({
      kept: { min: 6, max: 8 },
      precision: { min: "class", max: "class" },
    });
    expect(
      pHOf(
        { by: "study", value: { min: 6.2 }, as: "kept" },
        { by: "handbook", value: { min: 6, max: 8 }, as: "kept", precision: "class" },
      ),
    ).toStrictEqual({ kept: { min: 6.2, max: 8 }, precision: { max: "class" } });
  });

  test("matters where it is kept, not at its limits", () => {
    expect(
      pHOf(
        { by: "study", value: { min: 6, max: 8 }, as: "kept" },
        { by: "study", value: { min: 4, max: 9 }, as: "tolerated", precision: "class" },
      ),
    ).not.toHaveProperty("precision");
  });
});

test("no span of any number of sources runs backwards, and every end was said by one of them", () => {
  const end = fc.option(fc.integer({ min: 10, max: 35 }), { nil: undefined });
  const span = fc
    .tuple(end, end)
    .filter(([min, max]) => (min ?? max) !== undefined && (min ?? -99) <= (max ?? 99))
    .map(([min, max]) => ({ ...(min !== undefined && { min }), ...(max !== undefined && { max }) }));
  const byRank = fc.tuple(span, span, span, span).map((spans) =>
    ["study", "keeper", "handbook", trade].map((by, rank): Temperature => {
      const value = spans[rank] ?? {};
      return { by, value, as: "kept" };
    }),
  );
  fc.assert(
    fc.property(byRank, (statements) => {
      const fact = temperatureOf(...statements);
      for (const { kept: joined } of [fact?.value, ...(fact?.also ?? [])].flatMap((held) => held ?? [])) {
        expect(joined.min ?? -99).toBeLessThanOrEqual(joined.max ?? 99);
        if (joined.min !== undefined) expect(statements.map(({ value }) => value?.min)).toContain(joined.min);
        if (joined.max !== undefined) expect(statements.map(({ value }) => value?.max)).toContain(joined.max);
      }
      expect(fact?.value.kept).toMatchObject(statements[0]?.value ?? {});
    }),
  );
});
