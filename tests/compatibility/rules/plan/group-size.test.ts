import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import danioRerio from "vivary/catalog/danio-rerio";
import mikrogeophagusRamirezi from "vivary/catalog/mikrogeophagus-ramirezi";
import neocaridinaDavidi from "vivary/catalog/neocaridina-davidi";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import { groupSize } from "../../../../src/compatibility/rules/plan/group-size";
import { animal, type Stated } from "../../animals";
import { planBy, weighed } from "../../judging";

const living = (stated: Stated, unsexed: number) =>
  planBy(groupSize, [{ species: animal("fish", stated), unsexed }]);

const loner: Stated = { "social.living": "alone", "social.group": { least: 1 } };

test("a loner lives alone: several are worth knowing, and fewer are never asked for", () => {
  expect(weighed(living(loner, 1))).toEqual({ findings: [], met: [] });
  expect(living(loner, 2)).toMatchObject({
    outcome: "suitable",
    findings: [
      { weight: "advisory", measures: { needed: { max: 1 }, planned: { value: 2 } }, watchFor: "chasing" },
    ],
    conditions: [],
  });
});

test("where one will do by itself nothing is asked, nor told as met", () => {
  const snails: Stated = { "social.living": "either", "social.group": { least: 1 } };
  for (const number of [1, 3]) expect(weighed(living(snails, number))).toEqual({ findings: [], met: [] });
});

describe("a shoal", () => {
  const of = (unsexed: number) => living({ "social.living": "shoal", "social.group": { least: 8 } }, unsexed);

  test("is as many as are stated", () => {
    expect(weighed(of(8))).toEqual({ findings: [], met: ["restricting"] });
    expect(of(7).findings).toMatchObject([
      {
        weight: "restricting",
        condition: { on: "group.count", wanted: { min: 8 } },
        measures: { needed: { min: 8 }, planned: { value: 7 } },
      },
    ]);
  });

  test("stays open where no number is stated", () => {
    for (const way of ["shoal", "group", "pair"] as const) {
      const { findings, bounds, open } = living({ "social.living": way }, 6);
      expect(findings).toEqual([]);
      expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
      expect(open).toMatchObject([{ trait: "social.group", reason: "missing" }]);
    }
  });
});

describe("numbers to avoid", () => {
  const of = (unsexed: number) =>
    living({ "social.living": "group", "social.group": { least: 2, avoid: { min: 3, max: 4 } } }, unsexed);

  test("are too few to spread the harm", () => {
    expect(weighed(of(2)).findings).toEqual([]);
    expect(of(3).findings).toMatchObject([{ condition: { wanted: { min: 5 } } }]);
    expect(weighed(of(4)).findings).toEqual(["restricting"]);
    expect(weighed(of(5)).findings).toEqual([]);
  });

  test("tell how many fewer would do too, and only then", () => {
    expect(of(3).findings).toMatchObject([{ measures: { needed: { min: 5 }, fewer: { value: 2 } } }]);
    const shoal = { "social.living": "shoal", "social.group": { least: 6 } } as const;
    expect(living(shoal, 3).findings[0]?.measures).not.toHaveProperty("fewer");
    expect(of(1).findings[0]?.measures).not.toHaveProperty("fewer");
  });

  test("never ask for fewer than the least number", () => {
    const stated: Stated = {
      "social.living": "shoal",
      "social.group": { least: 8, avoid: { min: 2, max: 5 } },
    };
    for (const few of [1, 2, 5, 7]) {
      expect(living(stated, few).findings).toMatchObject([{ condition: { wanted: { min: 8 } } }]);
    }
  });
});

describe("a largest group", () => {
  const of = (unsexed: number) =>
    living(
      {
        "social.living": "pair",
        "social.group": { least: 1, avoid: { min: 3, max: 5 } },
        "social.largestGroup": 2,
      },
      unsexed,
    );

  test("that is exceeded is worth knowing, and changes no outcome", () => {
    const { outcome, bounds, findings, open } = of(6);
    expect([outcome, bounds, open]).toEqual(["suitable", { atBest: "suitable", atWorst: "suitable" }, []]);
    expect(findings).toMatchObject([
      { weight: "advisory", measures: { needed: { max: 2 }, planned: { value: 6 } }, watchFor: "chasing" },
    ]);
  });

  test("is no matter of so many or fewer, nor of a number that is to be passed", () => {
    for (const few of [1, 2]) expect(of(few).findings).toEqual([]);
    for (const avoided of [3, 4, 5]) expect(weighed(of(avoided)).findings).toEqual(["restricting"]);
  });

  test("that nobody states is not told and not asked for", () => {
    const { findings, bounds, open } = living({ "social.living": "shoal", "social.group": { least: 6 } }, 60);
    expect([findings, bounds.atWorst, open]).toEqual([[], "suitable", []]);
  });

  test("is two of rams, though the plan lists two pairs", () => {
    const pair = { species: mikrogeophagusRamirezi, males: 1, females: 1 };
    expect(planBy(groupSize, [pair]).findings).toEqual([]);
    expect(weighed(planBy(groupSize, [pair, pair])).findings).toEqual(["advisory", "advisory"]);
  });
});

describe("in a keeper's tank", () => {
  test("one betta is right, three neons are too few, ten are a shoal", () => {
    expect(planBy(groupSize, [{ species: bettaSplendens, males: 1 }]).outcome).toBe("suitable");
    expect(planBy(groupSize, [{ species: paracheirodonInnesi, unsexed: 3 }]).outcome).toBe("conditional");
    expect(planBy(groupSize, [{ species: paracheirodonInnesi, unsexed: 10 }]).outcome).toBe("suitable");
  });

  test("two danios are too few, and so are four", () => {
    for (const unsexed of [2, 4]) {
      expect(planBy(groupSize, [{ species: danioRerio, unsexed }]).outcome).toBe("conditional");
    }
  });

  test("a pair of shrimps is no colony", () => {
    expect(planBy(groupSize, [{ species: neocaridinaDavidi, unsexed: 2 }]).outcome).toBe("conditional");
  });

  test("ten white clouds are one shoal though five of them are golden", () => {
    const groups = [
      { species: tanichthysAlbonubes, unsexed: 5 },
      { species: tanichthysAlbonubes, form: "golden", unsexed: 5 },
    ];
    expect(planBy(groupSize, groups).findings).toEqual([]);
  });

  test("two loners are two loners though the plan lists them apart", () => {
    const groups = [
      { species: bettaSplendens, males: 1 },
      { species: bettaSplendens, females: 1 },
    ];
    expect(weighed(planBy(groupSize, groups)).findings).toEqual(["advisory", "advisory"]);
  });
});
