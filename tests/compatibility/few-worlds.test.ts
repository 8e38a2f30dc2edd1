import fc from "fast-check";
import { expect, test } from "vitest";
import { assessPlanWith } from "../../src/compatibility/assess/assess-plan";
import { judgedPlan } from "../../src/compatibility/assess/judged-plan";
import type { Rule } from "../../src/compatibility/engine/rule/rule";
import { checkedPlan } from "../../src/plan/inner";
import { anySpecies } from "../drawn";
import { runs } from "../runs";
import { planOf } from "./judging";

interface Seen {
  readonly from?: { readonly party: object };
  readonly to?: { readonly party: object };
}

/** The rules of the library, with the most times that each was run for one group, pair or plan. */
function counted() {
  const { rules, thresholds } = assessPlanWith({});
  const most = new Map<string, number>();
  const counting = rules.map((rule): Rule => {
    const times = new Map<object | undefined, Map<object | undefined, number>>();
    const judge = (seen: Seen) => {
      const [from, to] = [seen.from?.party, seen.to?.party];
      const ofOne = times.get(from) ?? new Map<object | undefined, number>();
      times.set(from, ofOne.set(to, (ofOne.get(to) ?? 0) + 1));
      most.set(rule.id, Math.max(most.get(rule.id) ?? 0, ofOne.get(to) ?? 0));
      return rule.judge(seen as never);
    };
    return { ...rule, judge };
  });
  return { by: { rules: counting, thresholds }, most };
}

test("what sources dispute of twenty species does not multiply: no rule is run hundreds of times for one answer", () => {
  const twenty = fc.uniqueArray(anySpecies, { minLength: 20, maxLength: 20 });
  fc.assert(
    fc.property(twenty, (species) => {
      const { by, most } = counted();
      judgedPlan(checkedPlan(planOf(species.map((one) => ({ species: one, unsexed: 6 })))), by);
      expect([...most].filter(([, times]) => times > 400)).toEqual([]);
      expect(most.size).toBe(by.rules.length);
    }),
    { numRuns: runs(10) },
  );
});
