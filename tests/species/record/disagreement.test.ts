import { expect, test } from "vitest";
import { disagreement } from "../../../src/species";
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
        kept("survey", 18, 24),
        { by: "survey", value: { max: 36 }, as: "limit" },
      ],
    },
  });
  expect(disagreement(record, "water.temperature")).toStrictEqual([
    {
      as: "kept",
      standing: [
        { root: "a-study", basis: "published", value: { min: 20, max: 26 } },
        { root: "a-survey", basis: "published", value: { min: 18, max: 24 } },
      ],
      setAside: [],
      disputed: true,
    },
    {
      as: "limit",
      standing: [
        { root: "a-study", basis: "published", value: { max: 36 } },
        { root: "a-survey", basis: "published", value: { max: 36 } },
      ],
      setAside: [],
      disputed: false,
    },
  ]);
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
    { by: "study", value: 4 },
    { by: "survey", value: 1461, unit: "d" },
  ];
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
  const record = recordOf({ water: { temperature: [kept("study", 20, 26), kept("mirror", 19, 25)] } });
  expect(disagreement(record, "water.temperature")).toMatchObject([
    { standing: [{ root: "a-study", value: { min: 20, max: 26 } }], disputed: false },
  ]);
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
