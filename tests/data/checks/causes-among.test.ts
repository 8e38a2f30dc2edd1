import { expect, test } from "vitest";
import { causesAmong } from "../../../data/checks/causes-among";
import { safeParseSpecies } from "../../../src/schema";
import { leastRecord } from "../../species/records";

const study = { cite: "a-study", at: "p. 4" };
const trade = "common-practice";

/** What is told first of a record of some fields. */
function told(fields: object): readonly string[] {
  const parsed = safeParseSpecies({ ...leastRecord, ...fields });
  return parsed.success ? [] : causesAmong(parsed.problems).map(({ path }) => path.join("."));
}

test("a misspelt source is told, and not that the source meant is unused, nor that its line contradicts another", () => {
  const height = [
    { by: "study", value: 40 },
    { by: "handbok", value: 50 },
  ];
  expect(told({ sources: { study, handbook: study }, space: { height } })).toStrictEqual([
    "space.height.1.by",
  ]);
});

test("another source that is unused is told all the same", () => {
  const height = [{ by: "handbok", value: 50 }];
  expect(told({ sources: { survey: study, handbook: study }, space: { height } })).toStrictEqual([
    "space.height.0.by",
    "sources.survey",
  ]);
});

test("a figure in °F is told, and not that it lies outside of the limits", () => {
  const limit = { by: trade, value: { max: 38 }, as: "limit" };
  const kept = { by: trade, value: { min: 68, max: 78 }, as: "kept" };
  expect(told({ water: { temperature: [kept, limit] } })).toStrictEqual([
    "water.temperature.0.value.min",
    "water.temperature.0.value.max",
  ]);
});

test("what contradicts in another trait, or in a form, is told", () => {
  const pH = [
    { by: trade, value: { min: 5, max: 6 }, as: "optimum" },
    { by: trade, value: { min: 7, max: 8 }, as: "kept" },
  ];
  const temperature = [{ by: trade, value: { max: 78 }, as: "kept" }];
  expect(told({ water: { temperature, pH } })).toStrictEqual(["water.temperature.0.value.max", "water.pH"]);
  const forms = { veil: { names: { en: ["veil danio"] }, water: { pH } } };
  expect(told({ water: { temperature }, forms })).toContain("forms.veil.water.pH");
});
