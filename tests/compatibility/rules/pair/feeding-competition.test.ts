import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import danioRerio from "vivary/catalog/danio-rerio";
import sewelliaLineolata from "vivary/catalog/sewellia-lineolata";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import { assessPlan } from "../../../../src/compatibility";
import { feedingCompetition } from "../../../../src/compatibility/rules/pair/feeding-competition";
import type { Offering } from "../../../../src/plan";
import { animal, type Stated } from "../../animals";
import { pairBy, planOf } from "../../judging";

const quick = animal("quick", {
  "diet.pace": "fast",
  "diet.reach": ["surface", "midwater"],
  "diet.light": ["day"],
  "diet.foods": ["dry", "live"],
});
const slow = (more: Stated = {}) =>
  animal("slow", {
    "diet.pace": "slow",
    "diet.reach": ["midwater", "bottom"],
    "diet.light": ["day", "night"],
    "diet.foods": ["dry", "worms"],
    ...more,
  });
const found = (more?: Stated) =>
  pairBy(feedingCompetition, { species: quick }, { species: slow(more) }).findings;

test("a slow eater gets too little beside a quick one that feeds where, when and on what it does", () => {
  expect(found()).toMatchObject([{ weight: "restricting", from: 0, to: 1, watchFor: "thin" }]);
  expect(found({ "diet.pace": "ordinary" })).toEqual([]);
});

test("they do not compete at different places, hours or foods", () => {
  expect(found({ "diet.reach": ["bottom"] })).toEqual([]);
  expect(found({ "diet.light": ["night"] })).toEqual([]);
  expect(found({ "diet.foods": ["algae"] })).toEqual([]);
});

test("a snail that lives on what grows and rots is always at table; one that waits for food is not", () => {
  const beside = (type: "herbivore" | "detritivore" | "omnivore" | "carnivore" | undefined) => {
    const { taxonomy, ...rest } = slow(type && { "diet.type": type });
    const snail = { ...rest, taxonomy: { ...taxonomy, kind: "snail" as const } };
    return pairBy(feedingCompetition, { species: quick }, { species: snail }).findings.length;
  };
  expect([beside("herbivore"), beside("detritivore")]).toEqual([0, 0]);
  expect([beside("omnivore"), beside("carnivore"), beside(undefined)]).toEqual([1, 1, 1]);
  expect(found({ "diet.type": "herbivore" })).toHaveLength(1);
});

describe("the condition names what reaches the slower one alone", () => {
  const plan = (offerings?: readonly Offering[]) => ({
    ...planOf([
      { species: quick, unsexed: 6 },
      { species: slow(), unsexed: 1 },
    ]),
    ...(offerings && { offerings }),
  });
  const outcome = (offerings?: readonly Offering[]) =>
    assessPlan(plan(offerings), { rules: [feedingCompetition] }).outcome;

  test("its own places and hours, or food given apart", () => {
    expect(assessPlan(plan(), { rules: [feedingCompetition] }).findings).toMatchObject([
      {
        condition: { on: "group.offerings", of: 1, wanted: { oneOf: ["bottom", "night", "apart"] } },
      },
    ]);
  });

  test("flakes in midwater by day do not", () => {
    expect(outcome([{ food: "dry", place: "midwater" }])).toBe("conditional");
  });

  test("nor do worms, which the quicker one takes where it finds them, though no list says so", () => {
    expect(outcome([{ food: "worms", place: "midwater" }])).toBe("conditional");
  });

  test("food on the ground, food after dark or food by hand do", () => {
    expect(outcome([{ food: "dry", place: "bottom" }])).toBe("suitable");
    expect(outcome([{ food: "dry", place: "midwater", light: "night" }])).toBe("suitable");
    expect(outcome([{ food: "dry", place: "midwater", apart: true }])).toBe("suitable");
  });

  test("food it does not take does not", () => {
    expect(outcome([{ food: "algae", place: "bottom", light: "night" }])).toBe("conditional");
  });
});

test("what grows feeds a slow eater of it beside a quick hunter", () => {
  const grazer = slow({ "diet.foods": ["dry", "algae"] });
  const groups = [
    { species: quick, unsexed: 6 },
    { species: grazer, unsexed: 1 },
  ];
  const offerings: readonly Offering[] = [{ food: "algae", place: "midwater" }];
  expect(assessPlan({ ...planOf(groups), offerings }, { rules: [feedingCompetition] }).outcome).toBe(
    "suitable",
  );
});

test("in a keeper's tank: danios outpace gouramis and bettas, not a loach that grazes on stones", () => {
  const beside = (species: typeof danioRerio) =>
    pairBy(feedingCompetition, { species: danioRerio }, { species }).findings.length;
  expect(beside(trichogasterChuna)).toBe(1);
  expect(beside(bettaSplendens)).toBe(1);
  expect(beside(sewelliaLineolata)).toBe(0);
});
