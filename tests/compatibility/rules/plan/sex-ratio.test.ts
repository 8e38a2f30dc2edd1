import { expect, test } from "vitest";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import { sexRatio } from "../../../../src/compatibility/rules/plan/sex-ratio";
import type { Group } from "../../../../src/plan";
import { animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const among = (sexes: Omit<Group, "species">, femalesPerMale = 2) =>
  planBy(sexRatio, [{ species: animal("fish", { "social.femalesPerMale": femalesPerMale }), ...sexes }]);

test("two females for each male are enough, fewer are not", () => {
  expect(weighed(among({ males: 2, females: 4 }))).toEqual({ findings: [], met: ["restricting"] });
  expect(among({ males: 2, females: 3 }).findings).toMatchObject([
    {
      weight: "restricting",
      condition: { on: "group.femalesPerMale", of: 0, wanted: { min: 2 } },
      measures: { needed: { value: 2 }, planned: { value: 1.5 } },
    },
  ]);
});

test("one sex alone wears nobody out, nor does a single animal", () => {
  expect(among({ males: 5 }).findings).toEqual([]);
  expect(among({ females: 5 }).findings).toEqual([]);
  expect(among({ unsexed: 1 }).findings).toEqual([]);
});

test("where the ratio does not matter, none is asked for", () => {
  expect(weighed(among({ males: 3, females: 1 }, 0))).toEqual({ findings: [], met: [] });
});

test("animals sold unsexed are told of it, and held to nothing", () => {
  for (const sexes of [{ unsexed: 6 }, { juveniles: 6 }, { males: 1, females: 2, unsexed: 1 }]) {
    expect(among(sexes)).toMatchObject({
      outcome: "suitable",
      bounds: { atBest: "suitable", atWorst: "suitable" },
      findings: [{ weight: "advisory", measures: { needed: { value: 2 } }, watchFor: "chasing" }],
      open: [],
    });
  }
});

test("animals sold unsexed beside too many males are too few, were they all female", () => {
  for (const sexes of [
    { males: 5, unsexed: 1 },
    { males: 2, females: 1, juveniles: 2 },
  ]) {
    expect(among(sexes)).toMatchObject({
      outcome: "conditional",
      bounds: { atBest: "conditional", atWorst: "conditional" },
      findings: [
        { weight: "restricting", condition: { on: "group.femalesPerMale", of: 0, wanted: { min: 2 } } },
      ],
      open: [{ reason: "not-given", on: "group.femalesPerMale", of: 0 }],
    });
  }
  expect(among({ males: 5, females: 1, unsexed: 4 }).findings).toMatchObject([
    { measures: { needed: { value: 2 }, planned: { max: 1 } } },
  ]);
});

test("no plan with five male guppies and one of unknown sex is better than with five and a female", () => {
  const among = (others: Omit<Group, "species">) =>
    planBy(sexRatio, [{ species: poeciliaReticulata, males: 5, ...others }]).outcome;
  expect([among({ unsexed: 1 }), among({ females: 1 })]).toEqual(["conditional", "conditional"]);
  expect(among({ females: 10, unsexed: 1 })).toBe("suitable");
});

test("three male guppies wear out one female", () => {
  const guppies = (males: number, females: number) =>
    planBy(sexRatio, [{ species: poeciliaReticulata, males, females }]).outcome;
  expect(guppies(3, 1)).toBe("conditional");
  expect(guppies(2, 5)).toBe("suitable");
});
