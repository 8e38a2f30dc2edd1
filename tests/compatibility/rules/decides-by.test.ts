import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import {
  assessPair,
  assessPlan,
  pairRules,
  planRules,
  type Rule,
  thresholds,
} from "../../../src/compatibility";

/** The rules, each noting the thresholds it reads. */
function watched(rules: readonly Rule[], read: Map<string, Set<string>>): readonly Rule[] {
  return rules.map((rule) => {
    const names = new Set<string>();
    read.set(rule.id, names);
    const judge = (seen: object) => {
      const values = Reflect.get(seen, "thresholds");
      const noting = new Proxy(values, {
        get: (target, name) => {
          names.add(String(name));
          return Reflect.get(target, name);
        },
      });
      return Reflect.apply(rule.judge, rule, [{ ...seen, thresholds: noting }]);
    };
    return { ...rule, judge };
  });
}

test("a rule decides by no threshold that it does not name, and every threshold is some rule's", () => {
  const read = new Map<string, Set<string>>();
  const rules = watched([...pairRules, ...planRules], read);
  const tank = { base: { shape: "rectangle", length: 100, width: 40 }, height: 40 } as const;
  const water = { temperature: 25, pH: 7, generalHardness: 8, hottest: 29, coolest: 20 };
  for (const a of allSpecies) {
    for (const b of allSpecies.filter((_, index) => index % 7 === 0))
      assessPair({ species: a }, { species: b }, { rules });
    assessPlan({ tank, water, groups: [{ species: a, unsexed: 3 }] }, { rules });
  }
  for (const rule of rules) {
    const unnamed = [...(read.get(rule.id) ?? [])].filter(
      (name) => !rule.decidesBy?.some((named) => named === name),
    );
    expect(unnamed, rule.id).toEqual([]);
  }
  const named = new Set(rules.flatMap(({ decidesBy = [] }) => decidesBy));
  expect([...named].sort()).toEqual(Object.keys(thresholds).sort());
});
