import { describe, expect, test } from "vitest";
import { testsSayHow } from "../../../data/checks/tests-say-how";
import type { TraitStatement } from "../../../src/species";
import { foundBy } from "./found";

type Temperature = TraitStatement<"water.temperature">;

const sources = { study: { cite: "a-study", at: "p. 4" } };
const found = (...temperature: Temperature[]) => foundBy(testsSayHow, { sources, water: { temperature } });
const record = "data/species/danio-rerio.json";

describe("how a test of temperature ended", () => {
  test.each(["limit", "tested"] as const)("is named for a figure that is %s", async (as) => {
    const figure: Temperature = { by: "study", value: { max: 38 }, as };
    expect(await found(figure)).toStrictEqual([
      `${record}: water.temperature: what study says is ${as}, without an endpoint`,
    ]);
    expect(await found({ ...figure, endpoint: "half-dead" })).toStrictEqual([]);
    expect(await found({ ...figure, endpoint: "unstated" })).toStrictEqual([]);
  });

  test.each(["kept", "optimum", "tolerated", "wild"] as const)(
    "matters not for one that is %s",
    async (as) => {
      expect(await found({ by: "study", value: { max: 30 }, as })).toStrictEqual([]);
    },
  );

  test("matters not for a note, but for a form", async () => {
    expect(await found({ by: "study", note: "Dies in ice.", as: "limit" })).toStrictEqual([]);
    const temperature: Temperature[] = [{ by: "study", value: { max: 38 }, as: "limit" }];
    const forms = { veil: { names: { en: ["veil danio"] }, water: { temperature } } };
    expect(await foundBy(testsSayHow, { sources, forms })).toHaveLength(1);
  });
});

test.each(["pH", "generalHardness", "salinity"] as const)(
  "a limit of %s names its endpoint, other figures of it need none",
  async (name) => {
    const water = (as: "limit" | "tested", endpoint?: "death") =>
      foundBy(testsSayHow, {
        sources,
        water: { [name]: [{ by: "study", value: { min: 4, max: 9 }, as, ...(endpoint && { endpoint }) }] },
      });
    expect(await water("limit")).toStrictEqual([
      `${record}: water.${name}: what study says is limit, without an endpoint`,
    ]);
    expect(await water("limit", "death")).toStrictEqual([]);
    expect(await water("tested")).toStrictEqual([]);
  },
);

describe("two limits of temperature in one statement", () => {
  const both: Temperature = { by: "study", value: { min: 10, max: 40 }, as: "limit", endpoint: "balance" };

  test("are of animals used to one temperature", async () => {
    expect(await found(both)).toStrictEqual([
      `${record}: water.temperature: both limits of study, without the temperature that the animals were used to`,
    ]);
    expect(await found({ ...both, acclimatedAt: 24 })).toStrictEqual([]);
  });

  test.each(["mixed", "unstated"] as const)("may be %s", async (endpoint) => {
    expect(await found({ ...both, endpoint })).toStrictEqual([]);
  });

  test("are no matter where one end stands alone, or was only tested", async () => {
    expect(await found({ ...both, value: { max: 40 } }, { ...both, value: { min: 10 } })).toStrictEqual([]);
    expect(await found({ ...both, as: "tested" })).toStrictEqual([]);
  });
});

test.each(["kept", "optimum", "tolerated", "wild"] as const)(
  "a figure that is %s tells of no test",
  async (as) => {
    const told = [`${record}: water.temperature: what study says is ${as}, and tells of a test`];
    const figure: Temperature = { by: "study", value: { max: 30 }, as };
    expect(await found({ ...figure, endpoint: "growth" })).toStrictEqual(told);
    expect(await found({ ...figure, acclimatedAt: 25 })).toStrictEqual(told);
    expect(await found({ ...figure, n: 12 })).toStrictEqual(told);
  },
);

test.each(["growth", "breeding", "choice", "performance", "housing"] as const)(
  "what was best for %s is no limit",
  async (endpoint) => {
    const figure: Temperature = { by: "study", value: { max: 30 }, as: "limit", endpoint };
    expect(await found(figure)).toStrictEqual([
      `${record}: water.temperature: a limit by study that was best for ${endpoint}`,
    ]);
    expect(await found({ ...figure, as: "tested" })).toStrictEqual([]);
    expect(await found({ ...figure, endpoint: "survival" })).toStrictEqual([]);
  },
);

test.each<[Temperature["value"], Temperature["unit"], number, number]>([
  [{ max: 38 }, undefined, 38, 39],
  [{ min: 10 }, undefined, 10, 9],
  [{ min: 50, max: 95 }, "degF", 30, 40],
])("animals with the limit %o were used to what they bear", async (value, unit, borne, past) => {
  const used = (acclimatedAt: number) =>
    found({ by: "study", value, as: "limit", endpoint: "balance", acclimatedAt, ...(unit && { unit }) });
  expect(await used(borne)).toStrictEqual([]);
  expect(await used(past)).toStrictEqual([
    `${record}: water.temperature: animals of study that were used to ${past} °C, past their own limit`,
  ]);
});
