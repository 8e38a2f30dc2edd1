import { describe, expect, test } from "vitest";
import { pairRules, planRules } from "../../../src/compatibility";
import { linesOf, weighing } from "./cases";
import { pairs } from "./pairs";
import { plans } from "./plans";

/** Given with every plan. */
const always = ["caution-electricity", "caution-release", "caution-zoonoses"];

const cases = { ...pairs, ...plans };
const rules = [...pairRules, ...planRules].filter(({ id }) => !always.includes(id));

describe.each(rules.map((rule) => [rule.id, rule] as const))("%s", (id, rule) => {
  const { silent = "", speaks = "" } = cases[id] ?? {};

  test("finds nothing wrong in ten ordinary cases", () => {
    expect(linesOf(silent)).toHaveLength(10);
    expect(linesOf(silent).map((line) => [line, weighing(rule, line)])).toEqual(
      linesOf(silent).map((line) => [line, []]),
    );
  });

  test("speaks where something is wrong", () => {
    expect(linesOf(speaks).filter((line) => weighing(rule, line).length === 0)).toEqual([]);
  });
});
