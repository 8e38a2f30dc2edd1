import { describe, expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import { assessPlan } from "../../../src/compatibility";
import { facts, lawgivers, type Plan, plantings, safeParsePlan, tempers } from "../../../src/plan";
import {
  english,
  englishLawgivers,
  type LawgiverNames,
  type Messages,
  describe as told,
  unitSystems,
} from "../../../src/report";
import { german, germanLawgivers } from "../../../src/report/de";

const languages: readonly (readonly [string, Messages, LawgiverNames])[] = [
  ["English", english, englishLawgivers],
  ["German", german, germanLawgivers],
];
const plan: Plan = {
  tank: { base: { shape: "rectangle", length: 80, width: 35 } },
  groups: [{ species: danioRerio, unsexed: 8 }],
};

describe.each(languages)("a form in %s", (_, { words, facts: named, language }, places) => {
  test("has a word for whatever a plan may choose, and no two alike", () => {
    for (const [list, said] of [
      [tempers, words.temper],
      [plantings, words.planting],
      [lawgivers, places],
      [Object.keys(facts), named],
    ] as const) {
      expect(Object.keys(said).sort()).toEqual([...list].sort());
      for (const text of Object.values(said)) expect(text).toMatch(/^\S.+\S$/);
    }
    for (const said of [words.temper, words.planting, places])
      expect(new Set(Object.values(said)).size).toBe(Object.keys(said).length);
  });

  test("offers places by the alphabet, another country last", () => {
    const { cites, ...others } = places;
    expect(Object.keys(places).at(-1)).toBe("cites");
    expect(cites).toContain("CITES");
    const names = Object.values(others);
    expect(names).toEqual([...names].sort((a, b) => a.localeCompare(b, language)));
  });
});

test("English calls facts by their labels", () => {
  for (const [name, { label }] of Object.entries(facts)) expect(english.facts).toHaveProperty([name], label);
});

test("whatever a form offers is read, and whatever is read is offered", () => {
  const parsed = (tank: object, group: object) => {
    const groups = [{ species: "danio-rerio", unsexed: 8, ...group }];
    return safeParsePlan({ format: 1, tank: { ...plan.tank, ...tank }, groups }, () => danioRerio);
  };
  for (const temper of tempers) expect(parsed({}, { temper }).success).toBe(true);
  for (const plants of plantings) expect(parsed({ plants }, {}).success).toBe(true);
  for (const wrong of [parsed({ plants: "x" }, {}), parsed({}, { temper: "x" })]) {
    const list = wrong.success ? "" : wrong.problems[0]?.expected;
    const offered = wrong.success || wrong.problems[0]?.path.includes("plants") ? plantings : tempers;
    for (const word of offered) expect(list).toContain(word);
  }
});

test("a report is written in every system of units, and in no other", () => {
  const verdict = assessPlan(plan);
  for (const units of unitSystems) expect(told(verdict, { units })).toContain("zebra danios");
  expect(() => told(verdict, { units: "nautical" as never })).toThrow(/metric, us, imperial/);
});
