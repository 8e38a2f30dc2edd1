import { describe, expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import {
  assessPair,
  assessPairBy,
  assessPlan,
  assessPlanBy,
  pairRules,
  planRules,
} from "../../src/compatibility";
import { ruleProblems } from "../../src/compatibility/engine/rule/rule-problems";
import * as named from "../../src/compatibility/rules";
import { someSpecies } from "../drawn";
import { planOf } from "./judging";

const { pairRules: _, planRules: __, ...rules } = named;

test("every rule has a name, and every name a rule", () => {
  expect(new Set(Object.values(rules))).toEqual(new Set([...pairRules, ...planRules]));
  const inWords = (name: string) => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
  for (const [name, { id }] of Object.entries(rules)) expect(inWords(name)).toBe(id);
});

test("the library's rules are complete", () => {
  for (const rule of [...pairRules, ...planRules]) expect(ruleProblems(rule, [rule.id])).toEqual([]);
});

describe("judged by some rules", () => {
  const some = someSpecies(20, 0).map((species) => ({ species }));

  test("two species get what all rules would say of that", () => {
    for (const a of some) {
      for (const b of some) {
        const by = [named.temperature, named.predation] as const;
        expect(assessPairBy(by, a, b)).toEqual(assessPair(a, b, { rules: by }));
      }
    }
  });

  test("a plan gets what all rules would say of that", () => {
    const plan = planOf([{ species: danioRerio, unsexed: 3 }]);
    const found = assessPlanBy([named.groupSize, named.longestRun], plan);
    const all = assessPlan(plan);
    const ofThese = ({ rule }: { readonly rule: string }) => ["group-size", "longest-run"].includes(rule);
    expect(found.findings).toEqual(all.findings.filter(ofThese));
    expect(found.met).toEqual(all.met.filter(ofThese));
    expect(found.findings.length).toBeGreaterThan(0);
  });

  test("it takes at least one rule", () => {
    expect(() => assessPairBy([], { species: danioRerio }, { species: danioRerio })).toThrow(
      /at least one rule/,
    );
    expect(() => assessPairBy([named.lid], { species: danioRerio }, { species: danioRerio })).toThrow(
      /about pairs/,
    );
    expect(() => assessPlanBy([], planOf([{ species: danioRerio, unsexed: 3 }]))).toThrow(
      /at least one rule/,
    );
  });
});
