import { expectTypeOf, test } from "vitest";
import {
  type AssessOptions,
  assessPair,
  defineRule,
  type Finding,
  type Measures,
  type OpenQuestion,
  type Quantity,
  type RuleId,
  type ThresholdName,
  thresholds,
  type Verdict,
} from "../../../src/compatibility";
import { type Condition, type FactName, facts } from "../../../src/plan";
import type { TraitPath, TraitValue } from "../../../src/species";

declare const verdict: Verdict;
declare const finding: Finding;
declare const question: OpenQuestion;

test("a rule's id is one of those there are, or an app's", () => {
  expectTypeOf<"predation">().toExtend<RuleId>();
  expectTypeOf<"water-temperature">().toExtend<RuleId>();
  // @ts-expect-error: misspelt
  const misspelt: RuleId = "predaton";
  // @ts-expect-error: no finding is by such a rule
  if (finding.rule === "predaton") return misspelt;
  if (finding.rule === "x-anything") return finding.measures?.anything;
  return finding.rule;
});

test("a finding's measures are those of its rule", () => {
  switch (finding.rule) {
    case "footprint":
      expectTypeOf(finding.measures?.needed).toEqualTypeOf<Quantity | undefined>();
      // @ts-expect-error: misspelt
      return finding.measures?.neded;
    case "plants-at-risk":
      expectTypeOf(finding.measures?.harm?.value).toEqualTypeOf<"eats" | "uproots" | "digs" | undefined>();
      // @ts-expect-error: a measure of another rule
      return finding.measures?.needed;
    case "feeding":
      expectTypeOf(finding.measures?.hours?.value).toEqualTypeOf<
        readonly ("day" | "dusk" | "night")[] | undefined
      >();
      return finding.measures?.places;
    case "mucus-grazing":
      // @ts-expect-error: a measure of another rule
      return finding.measures?.act;
    case "lid":
      expectTypeOf(finding.measures).toEqualTypeOf<Measures["lid"] | undefined>();
      // @ts-expect-error: it has none
      return finding.measures?.planned;
    default:
      return undefined;
  }
});

test("a rule answers with the measures that it declares, and nothing else", () => {
  const rule = {
    id: "x-long",
    way: "mutual",
    mayYield: ["advisory"],
    measures: { length: "cm", where: "zone" },
  } as const;
  const sound = () => [{ weight: "advisory", measures: { length: 3, where: "bottom" } }] as const;
  const basement = () => [{ weight: "advisory", measures: { where: "basement" } }] as const;
  const inches = () => [{ weight: "advisory", measures: { length: { value: 3, unit: "in" } } }] as const;
  defineRule({ ...rule, judge: sound });
  // @ts-expect-error: a word that is no zone
  defineRule({ ...rule, judge: basement });
  // @ts-expect-error: a figure has the unit that the rule declares
  defineRule({ ...rule, judge: inches });
  // @ts-expect-error: misspelt
  defineRule({ ...rule, judge: () => [{ weight: "advisory", measures: { lenght: 3 } }] });
  // @ts-expect-error: there is no such unit or kind of words
  defineRule({ ...rule, measures: { length: "furlong" }, judge: () => [] });
});

test("a fact of a plan is one of those there are", () => {
  expectTypeOf<"tank.lid">().toExtend<FactName>();
  // @ts-expect-error: misspelt
  const misspelt: Condition = { on: "tank.lidd", wanted: { oneOf: [true] } };
  // @ts-expect-error: misspelt
  facts["tank.lidd"];
  const once = { id: "x-once", way: "once", mayYield: ["advisory"] } as const;
  defineRule({ ...once, reads: ["tank.cover"], judge: ({ plan }) => (plan["tank.cover"] ? [] : "unknown") });
  // @ts-expect-error: it reads another
  defineRule({ ...once, reads: ["tank.cover"], judge: ({ plan }) => (plan["tank.lid"] ? [] : []) });
  // @ts-expect-error: there is no such fact
  defineRule({ ...once, reads: ["tank.colour"], judge: () => [] });
  return misspelt;
});

test("a threshold is one of those there are, and one that the rule decides by", () => {
  expectTypeOf<"sharedPH">().toExtend<ThresholdName>();
  // @ts-expect-error: misspelt
  const misspelt: AssessOptions = { thresholds: { sharedTemprature: 1 } };
  // @ts-expect-error: misspelt
  thresholds.sharedTemprature;
  // @ts-expect-error: nobody edits it
  thresholds.sharedTemperature.value = 3;
  const once = { id: "x-once", way: "once", mayYield: ["advisory"] } as const;
  defineRule({
    ...once,
    decidesBy: ["floorLoad"],
    judge: ({ thresholds: given }) => {
      expectTypeOf(given).toEqualTypeOf<{ readonly floorLoad: number }>();
      return [];
    },
  });
  // @ts-expect-error: there is no such threshold
  defineRule({ ...once, decidesBy: ["patience"], judge: () => [] });
  return misspelt;
});

test("a trait is one of those there are", () => {
  expectTypeOf<"water.pH">().toExtend<TraitPath>();
  // @ts-expect-error: misspelt
  expectTypeOf<"water.ph">().toExtend<TraitPath>();
  defineRule({
    id: "x-animals",
    way: "each-way",
    needs: { from: ["water.pH"] },
    mayYield: ["advisory"],
    judge: ({ from, to }) => {
      expectTypeOf(from.party.kin.males).toEqualTypeOf<number | undefined>();
      // @ts-expect-error: a rule sees animals, no profile
      to.party.species;
      return [];
    },
  });
  const pair = { id: "x-pair", way: "mutual", mayYield: ["advisory"] } as const;
  // @ts-expect-error: a pair has no plan
  defineRule({ ...pair, judge: ({ plan }) => (plan ? [] : []) });
});

test("what is open has what its reason says", () => {
  switch (question.reason) {
    case "missing":
      // @ts-expect-error: nobody knows any
      question.values;
      return expectTypeOf(question.trait).toEqualTypeOf<TraitPath>();
    case "disputed":
      // @ts-expect-error: it is about a trait
      question.on;
      if (question.trait === "social.group")
        expectTypeOf(question.values).toEqualTypeOf<readonly TraitValue<"social.group">[]>();
      return expectTypeOf(question.trait).toEqualTypeOf<TraitPath>();
    case "not-given":
      // @ts-expect-error: it is about the plan
      question.trait;
      return expectTypeOf(question.on).toEqualTypeOf<FactName>();
    case "outside-domain":
      // @ts-expect-error: it is about an equation
      return question.trait;
  }
});

test("a condition wants a span or words", () => {
  const [condition] = verdict.conditions;
  if (!condition) return;
  expectTypeOf(condition.findings).toEqualTypeOf<readonly number[]>();
  if ("oneOf" in condition.wanted)
    expectTypeOf(condition.wanted.oneOf).toEqualTypeOf<readonly (string | boolean)[]>();
  else expectTypeOf(condition.wanted.min).toEqualTypeOf<number | undefined>();
  // @ts-expect-error: nobody edits it
  condition.on = "tank.lid";
});

test("nobody edits a verdict", () => {
  // @ts-expect-error: it is read only
  verdict.outcome = "suitable";
  // @ts-expect-error: it is read only
  verdict.findings.push(finding);
  // @ts-expect-error: a verdict has no such outcome
  if (verdict.outcome === "perfect") return;
  expectTypeOf(assessPair).returns.toEqualTypeOf<Verdict>();
});
