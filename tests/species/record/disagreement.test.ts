import { expect, test } from "vitest";
import { disagreement, type SpeciesRecord, type TraitStatement } from "../../../src/species";
import { recordOf } from "../records";

const trade = "common-practice";
const kept = (by: string, min: number, max: number, more = {}) =>
  ({ by, value: { min, max }, as: "kept", ...more }) as const;

test("there is a row for each meaning, and each says whether its sources differ", () => {
  const record = recordOf({
    water: {
      temperature: [
        kept("study", 20, 26),
        { by: "study", value: { max: 36 }, as: "limit" },
        kept("handbook", 18, 24),
        { by: "handbook", value: { max: 36 }, as: "limit" },
      ],
    },
  });
  expect(disagreement(record, "water.temperature")).toStrictEqual([
    {
      as: "kept",
      standing: [
        { by: "study", root: "a-study", basis: "published", value: { min: 20, max: 26 } },
        { by: "handbook", root: "a-handbook", basis: "memory", value: { min: 18, max: 24 } },
      ],
      setAside: [],
      disputed: true,
    },
    {
      as: "limit",
      standing: [
        { by: "study", root: "a-study", basis: "published", value: { max: 36 } },
        { by: "handbook", root: "a-handbook", basis: "memory", value: { max: 36 } },
      ],
      setAside: [],
      disputed: false,
    },
  ]);
});

test("ends that complete each other agree, unless no animal has both", () => {
  const disputed = (...temperature: TraitStatement<"water.temperature">[]) =>
    disagreement(recordOf({ water: { temperature } }), "water.temperature").map((row) => row.disputed);
  const [low, high] = [
    { by: "study", value: { min: 0 }, as: "limit" },
    { by: "handbook", value: { max: 47 }, as: "limit" },
  ] as const;
  expect(disputed(low, high)).toStrictEqual([false]);
  expect(disputed(low, { ...high, value: { min: 0, max: 47 } })).toStrictEqual([false]);
  expect(disputed(low, { ...high, value: { min: 2, max: 47 } })).toStrictEqual([true]);
  expect(disputed({ ...low, acclimatedAt: 10 }, { ...high, acclimatedAt: 30 })).toStrictEqual([true]);
});

test("a length has a row for each sex and measure, a figure for each stage", () => {
  const length = { by: trade, value: 4, as: "usual", measure: "TL" } as const;
  const record = recordOf({
    size: { adultLength: [length, { ...length, sex: "male" }, { ...length, measure: "SL" }] },
    water: { temperature: [kept(trade, 20, 26), kept(trade, 26, 28, { stage: "fry" })] },
  });
  expect(disagreement(record, "size.adultLength")).toMatchObject([
    { as: "usual", measure: "TL" },
    { as: "usual", measure: "TL", sex: "male" },
    { as: "usual", measure: "SL" },
  ]);
  expect(disagreement(record, "water.temperature")).toMatchObject([
    { as: "kept" },
    { as: "kept", stage: "fry" },
  ]);
});

test("values are compared in one unit", () => {
  const lifespan = [
    { by: "study", value: 4, as: "greatest" },
    { by: "survey", value: 1461, unit: "d", as: "greatest" },
  ] as const;
  // A Julian year has 365.25 days.
  const [row] = disagreement(recordOf({ size: { lifespan } }), "size.lifespan");
  expect(row?.standing.map(({ value }) => value)).toStrictEqual([4, 4]);
  expect(row?.disputed).toBe(false);
});

test("the adopted one comes first", () => {
  const record = recordOf({
    water: { temperature: [kept("study", 20, 26), kept(trade, 18, 24, { adopt: "Long practice." })] },
  });
  expect(disagreement(record, "water.temperature")[0]?.standing.map(({ basis }) => basis)).toStrictEqual([
    trade,
    "published",
  ]);
});

test("what is set aside is shown with its reason and disputes nothing", () => {
  const record = recordOf({
    water: { temperature: [kept("study", 20, 26), kept("handbook", 4, 30, { setAside: "A pond." })] },
  });
  expect(disagreement(record, "water.temperature")).toMatchObject([
    {
      standing: [{ root: "a-study" }],
      setAside: [{ root: "a-handbook", basis: "memory", value: { min: 4, max: 30 }, setAside: "A pond." }],
      disputed: false,
    },
  ]);
});

test("a copy of a source is no second voice", () => {
  const record = recordOf({
    water: { temperature: [kept("mirror", 19, 25), kept("study", 20, 26, { adopt: "The original." })] },
  });
  expect(disagreement(record, "water.temperature")).toMatchObject([
    { standing: [{ root: "a-study", value: { min: 20, max: 26 } }], disputed: false },
  ]);
});

test("lengths are compared as totals, whatever was measured", () => {
  const length = (value: number, measure: "TL" | "SL" | "unstated", more = {}) =>
    ({ by: "study", value, as: "usual", measure, ...more }) as const;
  const disputedAt = (...adultLength: TraitStatement<"size.adultLength">[]) =>
    disagreement(recordOf({ size: { adultLength } }), "size.adultLength").map(({ disputed }) => disputed);
  // 8.2 cm of standard length are 9.6 to 10.3 cm in all.
  expect(disputedAt(length(10, "TL"), length(8.2, "SL"))).toStrictEqual([false, false]);
  expect(disputedAt(length(12, "TL"), length(8.2, "SL"))).toStrictEqual([true, true]);
  expect(disputedAt(length(10, "TL"), length(8.2, "unstated"))).toStrictEqual([false, false]);
  // Another sex or meaning is another animal.
  expect(disputedAt(length(12, "TL", { sex: "male" }), length(8.2, "SL"))).toStrictEqual([false, false]);
  expect(disputedAt(length(12, "TL", { as: "greatest" }), length(8.2, "SL"))).toStrictEqual([false, false]);
});

test("totals are told from the species' own share of standard length", () => {
  const size: SpeciesRecord["size"] = {
    adultLength: [
      { by: "study", value: 12, as: "usual", measure: "TL" },
      { by: "study", value: 9, as: "usual", measure: "SL" },
    ],
  };
  const rows = (standardShare: number) =>
    disagreement(
      recordOf({ size: { ...size, standardShare: [{ by: "study", value: standardShare }] } }),
      "size.adultLength",
    ).map(({ disputed }) => disputed);
  expect(rows(0.75)).toStrictEqual([false, false]);
  expect(rows(0.9)).toStrictEqual([true, true]);
});

test("a least room has a row for each number of animals", () => {
  const record = recordOf({
    space: {
      baseLength: [
        { by: "study", value: { least: 120, for: 6 } },
        { by: trade, value: { least: 100, for: 6 } },
        { by: trade, value: { least: 60, for: 1 } },
      ],
    },
  });
  expect(disagreement(record, "space.baseLength")).toMatchObject([
    { for: 6, disputed: true },
    { for: 1, disputed: false },
  ]);
});

test("a figure carries how it was tested", () => {
  const tested = { endpoint: "balance", acclimatedAt: 24, n: 12 } as const;
  const record = recordOf({
    water: { temperature: [{ by: "study", value: { max: 38 }, as: "limit", ...tested }] },
  });
  expect(disagreement(record, "water.temperature")[0]?.standing).toMatchObject([tested]);
});

test("statements that add up all stand and dispute nothing", () => {
  const record = recordOf({
    diet: {
      foods: [
        { by: "study", value: "worms" },
        { by: "study", value: "algae" },
        { by: trade, value: "dry" },
      ],
    },
  });
  expect(disagreement(record, "diet.foods")).toMatchObject([
    { standing: [{ value: "worms" }, { value: "algae" }, { value: "dry" }], disputed: false },
  ]);
});

test("nobody's word and mere notes give no rows", () => {
  expect(disagreement(recordOf({}), "water.pH")).toStrictEqual([]);
  const noted = recordOf({ water: { pH: [{ by: trade, note: "Soft." }] } });
  expect(disagreement(noted, "water.pH")).toStrictEqual([]);
});
