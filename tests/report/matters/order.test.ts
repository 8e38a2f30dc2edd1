import { expect, test } from "vitest";
import { type Finding, pairRules, planRules } from "../../../src/compatibility";
import { rankOf } from "../../../src/report/matters/order";

test("every rule that says what can go wrong has a place of its own in what a keeper hears first", () => {
  const rules = [...pairRules, ...planRules].map(({ id }) => id).filter((id) => !id.startsWith("caution-"));
  const rank = (rule: string) => rankOf({ rule, weight: "advisory" } as Finding);
  const unplaced = rank("a rule of nobody's");
  expect(rules.filter((rule) => rank(rule) === unplaced)).toEqual([]);
  expect(new Set(rules.map(rank)).size).toBe(rules.length);
});
