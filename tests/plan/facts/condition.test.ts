import { describe, expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import { assessPlan, type Finding } from "../../../src/compatibility";
import { InvalidInputError } from "../../../src/errors";
import { type Condition, facts, isMet, type Plan } from "../../../src/plan";
import { overlap, type PartialRange } from "../../../src/ranges";
import { animal } from "../../compatibility/animals";
import { samplePlans } from "../arbitrary";

const caveDweller = animal("cave-dweller", {
  "space.hides": [{ anyOf: ["caves", "wood"], each: 1, holder: "each" }],
});

const plan: Plan = {
  tank: {
    base: { shape: "rectangle", length: 100, width: 40 },
    cover: 0.2,
    plants: "planted",
    substrate: "sand",
    hides: { caves: 2, shells: 3, wood: 1 },
  },
  water: { temperature: 24 },
  groups: [
    { species: danioRerio, males: 4, females: 6 },
    { species: puntigrusTetrazona, unsexed: 8, length: 5 },
    { species: puntigrusTetrazona, form: "long-fin", males: 2 },
    { species: caveDweller, unsexed: 2 },
  ],
  offerings: [{ food: "dry", place: "surface" }],
};

const ground = (...oneOf: readonly string[]): Condition => ({ on: "tank.substrate", wanted: { oneOf } });

describe("a condition", () => {
  test.each<readonly [string, Condition, boolean | undefined]>([
    ["is met at its least", { on: "tank.longestRun", wanted: { min: 100, unit: "cm" } }, true],
    ["is not met below it", { on: "tank.longestRun", wanted: { min: 100.1, unit: "cm" } }, false],
    ["is met at its most", { on: "water.temperature", wanted: { min: 20, max: 24 } }, true],
    ["is not met above it", { on: "water.temperature", wanted: { max: 23.9 } }, false],
    ["on what the plan does not say is open", { on: "water.pH", wanted: { min: 6, max: 7 } }, undefined],
    ["on salinity is met by fresh water", { on: "water.salinity", wanted: { max: 0.5 } }, true],
    ["on open water is met by what cover leaves", { on: "tank.openWater", wanted: { min: 0.8 } }, true],
    ["on the ground is met by one that is named", ground("sand", "bare"), true],
    ["on the ground is not met by another", ground("pebbles"), false],
    ["on hiding places counts those that serve", { on: "tank.hides", of: 3, wanted: { min: 3 } }, true],
    ["on hiding places leaves out others", { on: "tank.hides", of: 3, wanted: { min: 4 } }, false],
    ["on sex is met by that of all", { on: "group.sex", of: 2, wanted: { oneOf: ["male"] } }, true],
    ["on sex is not met by the other", { on: "group.sex", of: 2, wanted: { oneOf: ["female"] } }, false],
    ["on sex of the unsexed is open", { on: "group.sex", of: 1, wanted: { oneOf: ["male"] } }, undefined],
    ["on form is met by that form", { on: "group.form", of: 2, wanted: { oneOf: ["long-fin"] } }, true],
    ["on form is not met as sold", { on: "group.form", of: 1, wanted: { oneOf: ["long-fin"] } }, false],
    ["on form as sold is met by none", { on: "group.form", of: 1, wanted: { oneOf: ["as-sold"] } }, true],
    ["is met by any of its words", { on: "tank.plants", wanted: { oneOf: ["planted", "grown-in"] } }, true],
    ["is not met by another word", { on: "tank.plants", wanted: { oneOf: ["none"] } }, false],
    ["on a count is about all of a kind", { on: "group.count", of: 1, wanted: { min: 10 } }, true],
    ["on a count is about a kind alone", { on: "group.count", of: 0, wanted: { min: 10 } }, true],
    ["on males is about the known ones", { on: "group.males", of: 0, wanted: { max: 4 } }, true],
    ["on males of the unsexed is open", { on: "group.males", of: 1, wanted: { max: 4 } }, undefined],
    ["on pairs counts the rarer sex", { on: "group.pairs", of: 0, wanted: { max: 4 } }, true],
    ["on females to a male divides", { on: "group.femalesPerMale", of: 0, wanted: { min: 1.5 } }, true],
    ["on length is about the one stated", { on: "group.length", of: 1, wanted: { min: 5 } }, true],
    ["on a length not stated is open", { on: "group.length", of: 0, wanted: { min: 3 } }, undefined],
    ["on being grown is met by adults", { on: "group.grown", of: 0, wanted: { oneOf: [true] } }, true],
    ["on fins is about the form", { on: "group.longFins", of: 1, wanted: { oneOf: [false] } }, true],
    [
      "on food is met by one that is taken",
      { on: "group.offerings", of: 0, wanted: { oneOf: ["dry"] } },
      true,
    ],
    ["on food is not met by another", { on: "group.offerings", of: 0, wanted: { oneOf: ["live"] } }, false],
  ])("%s", (_, condition, met) => {
    expect(isMet(condition, plan)).toBe(met);
  });

  test("on offerings is open where the plan says nothing of feeding", () => {
    const { offerings: _, ...unfed } = plan;
    expect(isMet({ on: "group.offerings", of: 0, wanted: { oneOf: ["dry"] } }, unfed)).toBeUndefined();
  });
});

describe("what is no condition is refused", () => {
  test.each([
    [undefined, ["on"], "word"],
    [{ on: "tank.colour", wanted: { min: 1 } }, ["on"], "word"],
    [{ on: "toString", wanted: { min: 1 } }, ["on"], "word"],
    [{ on: "tank.longestRun" }, ["wanted"], "type"],
    [{ on: "tank.longestRun", wanted: {} }, ["wanted"], "type"],
    [{ on: "tank.longestRun", wanted: { min: "60" } }, ["wanted"], "type"],
    [{ on: "tank.longestRun", wanted: { min: Number.NaN } }, ["wanted"], "type"],
    [{ on: "tank.longestRun", wanted: { min: 80, max: 60 } }, ["wanted"], "type"],
    [{ on: "tank.lid", wanted: { oneOf: [] } }, ["wanted"], "type"],
    [{ on: "tank.longestRun", wanted: { min: 24, unit: "in" } }, ["wanted", "unit"], "word"],
    [{ on: "water.pH", wanted: { min: 6, unit: "1" } }, ["wanted", "unit"], "word"],
    [{ on: "tank.plants", wanted: { oneOf: ["planted", "grownin"] } }, ["wanted", "oneOf", 1], "word"],
    [{ on: "tank.lid", wanted: { oneOf: ["yes"] } }, ["wanted", "oneOf", 0], "word"],
    [{ on: "tank.flow.calmest", wanted: { oneOf: ["calm"] } }, ["wanted", "oneOf", 0], "word"],
    [{ on: "group.sex", of: 0, wanted: { oneOf: ["males"] } }, ["wanted", "oneOf", 0], "word"],
    [{ on: "group.offerings", of: 0, wanted: { oneOf: ["pellets"] } }, ["wanted", "oneOf", 0], "word"],
    [{ on: "tank.lid", of: 0, wanted: { oneOf: [true] } }, ["of"], "range"],
    [{ on: "group.count", wanted: { min: 6 } }, ["of"], "range"],
    [{ on: "group.count", of: 4, wanted: { min: 6 } }, ["of"], "range"],
    [{ on: "group.count", of: -1, wanted: { min: 6 } }, ["of"], "range"],
    [{ on: "group.count", of: "0", wanted: { min: 6 } }, ["of"], "range"],
  ])("%j", (condition, path, code) => {
    expect(() => Reflect.apply(isMet, undefined, [condition, plan])).toThrow(
      expect.objectContaining({ problems: [expect.objectContaining({ path, code })] }),
    );
  });

  test("nor is a plan that cannot be", () => {
    const lid: Condition = { on: "tank.lid", wanted: { oneOf: [true] } };
    expect(() => isMet(lid, { ...plan, groups: [] })).toThrow(InvalidInputError);
  });
});

describe("isMet and assessPlan agree over many plans", () => {
  const judged = samplePlans(100).map((sample) => ({ sample, verdict: assessPlan(sample) }));
  const conditionOf = (finding: Finding) =>
    finding.weight === "restricting" ? finding.condition : undefined;

  test("that what is met is met", () => {
    const met = judged.flatMap(({ sample, verdict }) =>
      verdict.met.map((finding) => {
        const condition = conditionOf(finding);
        return condition && isMet(condition, sample);
      }),
    );
    expect(met.length).toBeGreaterThan(300);
    expect(new Set(met)).toEqual(new Set([true]));
  });

  test("that what restricts is not met, or open for want of a fact or a trait", () => {
    let [unmet, left] = [0, 0];
    for (const { sample, verdict } of judged) {
      const restricting = verdict.findings.filter(({ weight }) => weight !== "advisory");
      for (const finding of restricting) {
        const condition = conditionOf(finding);
        if (!condition) continue;
        const met = isMet(condition, sample);
        expect(met).not.toBe(true);
        if (met === false) unmet += 1;
        if (met === false) continue;
        left += 1;
        const { on, of } = condition;
        const asked = verdict.open.some(
          (question) =>
            question.rule === finding.rule &&
            (question.reason === "missing" ||
              (question.reason === "not-given" && question.on === on && question.of === of)),
        );
        // Where the rule has a reason between the two that stands whatever the answer, nothing hangs on it.
        const standsAnyway = restricting.some((other) => {
          const certain = conditionOf(other);
          const ofTheTwo =
            other.rule === finding.rule && other.from === finding.from && other.to === finding.to;
          return ofTheTwo && (certain ? isMet(certain, sample) === false : other.weight === "blocking");
        });
        expect(asked || standsAnyway, JSON.stringify(finding)).toBe(true);
      }
    }
    expect(Math.min(unmet, left)).toBeGreaterThan(100);
  });

  test("that a question the plan leaves open is about a condition that is", () => {
    let asked = 0;
    for (const { sample, verdict } of judged) {
      for (const question of verdict.open) {
        if (question.reason !== "not-given") continue;
        asked += 1;
        const { rule, on, of } = question;
        const conditions = verdict.findings
          .filter((finding) => finding.rule === rule)
          .map(conditionOf)
          .filter((condition) => condition?.on === on && condition.of === of);
        expect(conditions.length, JSON.stringify(question)).toBeGreaterThan(0);
        for (const condition of conditions) {
          expect(condition && isMet(condition, sample)).toBeUndefined();
        }
      }
    }
    expect(asked).toBeGreaterThan(100);
  });

  test("on conditions joined: each is met where all it was joined of are", () => {
    for (const { sample, verdict } of judged) {
      for (const joint of verdict.conditions) {
        const { findings, aim, ...condition } = joint;
        if (aim) expect(overlap(aim, condition.wanted as PartialRange)).toEqual(aim);
        const parts = findings
          .map((index) => verdict.findings[index])
          .map((finding) => finding && conditionOf(finding));
        const each = parts.map((part) => part && isMet(part, sample));
        expect(isMet(condition, sample)).toBe(each.includes(false) ? false : undefined);
      }
    }
  });

  test("on every fact there is", () => {
    const used = new Set(
      judged.flatMap(({ verdict }) =>
        [...verdict.findings, ...verdict.met].map((finding) => conditionOf(finding)?.on),
      ),
    );
    used.delete(undefined);
    for (const fact of used) expect(Object.keys(facts)).toContain(fact);
    expect(used.size).toBeGreaterThan(20);
  });
});

test("a number is not asked for in words, nor a word as a number", () => {
  const plan: Plan = {
    tank: { base: { shape: "rectangle", length: 60, width: 30 } },
    groups: [{ species: danioRerio, unsexed: 6 }],
  };
  expect(() => isMet({ on: "tank.longestRun", wanted: { oneOf: ["60"] } }, plan)).toThrow(
    /since it is a number/,
  );
  expect(() => isMet({ on: "tank.lid", wanted: { min: 1 } }, plan)).toThrow(/since it is no number/);
});
