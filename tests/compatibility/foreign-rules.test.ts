import { describe, expect, test } from "vitest";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { assessPair, assessPlan, counting, defineRule, pairRules, planRules } from "../../src/compatibility";
import { InvalidInputError, pathText } from "../../src/errors";
import { stillHeld } from "../garbage";
import { planOf } from "./judging";

const neon = { species: paracheirodonInnesi };
const plan = planOf([{ ...neon, unsexed: 10 }]);

const defined = (rule: unknown) => Reflect.apply(defineRule, undefined, [rule]);

/** What an app says of its rule. */
const sound = { id: "x-app", way: "mutual", mayYield: ["advisory"], judge: () => [] } as const;
const answering = (answer: unknown, more: object = {}) => ({ ...sound, ...more, judge: () => [answer] });

/** The functions as JavaScript calls them: with anything for a rule. */
const pairBy = (...rules: readonly unknown[]) =>
  Reflect.apply(assessPair, undefined, [neon, neon, { rules }]);
const planBy = (...rules: readonly unknown[]) => Reflect.apply(assessPlan, undefined, [plan, { rules }]);

/** Where a call was wrong, and what was expected there. */
function problemsOf(run: () => unknown): readonly (readonly [string, string])[] {
  try {
    run();
  } catch (error) {
    if (!(error instanceof InvalidInputError)) throw error;
    return error.problems.map(({ path, expected }) => [pathText(path), expected]);
  }
  throw new Error("nothing was thrown");
}

test("a sound rule of an app is taken", () => {
  const rule = defined({ ...sound });
  expect(pairBy(rule).outcome).toBe("suitable");
  expect(planBy(defined({ ...sound, way: "once" })).outcome).toBe("suitable");
  expect(pairBy(...pairRules, rule).made.rules.at(-1)).toBe("x-app");
});

test("what was not defined as a rule is refused where it is used, sound or not", () => {
  const [temperature] = pairRules;
  for (const rule of [
    sound,
    { ...temperature },
    { ...defined({ ...sound }) },
    {},
    undefined,
    "temperature",
  ]) {
    const refused = [["options.rules[1]", expect.stringMatching(/defineRule/)]];
    expect(problemsOf(() => pairBy(defined({ ...sound, id: "x-other" }), rule))).toEqual(refused);
    expect(problemsOf(() => planBy(planRules[0], rule))).toEqual(refused);
  }
});

describe("a rule that is none is refused where it is defined", () => {
  test.each([
    ["that yields a weight there is none of", { ...sound, mayYield: ["fatal"] }, "mayYield", /blocking/],
    ["that yields nothing", { ...sound, mayYield: [] }, "mayYield", /blocking/],
    ["of pairs there are none of", { ...sound, between: "friends" }, "between", /two-species/],
    ["of a plan, between two", { ...sound, way: "once", between: "two-species" }, "between", /rule of pairs/],
    [
      "that sums up by nothing there is",
      { ...sound, way: "once", sums: true },
      "sums",
      /weighing or counting/,
    ],
    ["of pairs that sums up a plan", { ...sound, sums: counting }, "sums", /rule of plans/],
    ["of a way there is none of", { ...sound, way: "sometimes" }, "way", /each-way/],
    ["of a way as objects have", { ...sound, way: "constructor" }, "way", /each-way/],
    ["that does not judge", { ...sound, judge: undefined }, "judge", /function/],
    ["without an id", { ...sound, id: "" }, "id", /words/],
    ["with an id in capitals", { ...sound, id: "x-App" }, "id", /words/],
    ["with an id as the library's rules have", { ...sound, id: "app" }, "id", /begins with x-/],
    ["with the id of one of the library's rules", { ...sound, id: "temperature" }, "id", /begins with x-/],
    [
      "that needs a trait there is none of",
      { ...sound, needs: { from: ["water.colour"] } },
      "needs.from",
      /trait/,
    ],
    [
      "that needs a trait of a side it does not see",
      { ...sound, way: "once", needs: { from: [] } },
      "needs.from",
      /no party/,
    ],
    [
      "that decides by a threshold there is none of",
      { ...sound, decidesBy: ["patience"] },
      "decidesBy",
      /threshold/,
    ],
    ["with measures that are none", { ...sound, measures: "cm" }, "measures", /unit/],
  ] as const)("%s", (_, rule, name, expected) => {
    expect(problemsOf(() => defined(rule))).toContainEqual([`rule.${name}`, expect.stringMatching(expected)]);
  });

  test("with everything that is wrong with it", () => {
    const names = problemsOf(() => defined({})).map(([path]) => path);
    expect(names).toEqual(["rule.id", "rule.way", "rule.judge", "rule.mayYield"]);
  });

  test("with the plan's facts that it reads and there are none of", () => {
    const reads = { ...sound, way: "once", reads: ["tank.colour"] };
    expect(problemsOf(() => defined(reads))).toContainEqual(["rule.reads", expect.stringMatching(/fact/)]);
  });
});

test("the same rule twice is refused, an app's or the library's", () => {
  expect(problemsOf(() => pairBy(defined({ ...sound }), defined({ ...sound })))).toEqual([
    ["options.rules[1].id", "another id than that of rules[0]"],
  ]);
  expect(problemsOf(() => pairBy(...pairRules, pairRules[0]))).toEqual([
    [`options.rules[${pairRules.length}].id`, "another id than that of rules[0]"],
  ]);
  expect(problemsOf(() => planBy(...planRules, planRules[0]))).toHaveLength(1);
});

describe("an answer that a rule did not announce is refused", () => {
  const restricting = { mayYield: ["restricting"] };
  const lid = { on: "tank.lid", wanted: { oneOf: [true] } };

  test.each([
    ["of a weight it does not yield", answering({ weight: "blocking" }), "rules.x-app", /advisory/],
    ["of a weight there is none of", answering({ weight: "fatal" }), "rules.x-app", /advisory/],
    ["of no weight", answering({}), "rules.x-app", /advisory/],
    [
      "with a measure it does not declare",
      answering({ weight: "advisory", measures: { length: 3 } }),
      "rules.x-app",
      /measures/,
    ],
    [
      "without the condition",
      answering({ weight: "restricting" }, restricting),
      "rules.x-app.condition.on",
      /tank\.lid/,
    ],
    [
      "with a condition on no fact of a plan",
      answering({ weight: "restricting", condition: { ...lid, on: "tank.colour" } }, restricting),
      "rules.x-app.condition.on",
      /tank\.lid/,
    ],
    [
      "with a condition that wants nothing",
      answering({ weight: "restricting", condition: { on: "tank.lid" } }, restricting),
      "rules.x-app.condition.wanted",
      /oneOf/,
    ],
    [
      "with a condition in another unit",
      answering(
        { weight: "restricting", condition: { on: "tank.height", wanted: { min: 12, unit: "in" } } },
        restricting,
      ),
      "rules.x-app.condition.wanted.unit",
      /cm/,
    ],
    [
      "with a condition on animals, of no party",
      answering({ weight: "restricting", condition: { on: "group.count", wanted: { min: 2 } } }, restricting),
      "rules.x-app.condition.of",
      /index/,
    ],
  ] as const)("%s", (_, rule, path, expected) => {
    const named = [[path, expect.stringMatching(expected)]];
    expect(problemsOf(() => pairBy(defined({ ...rule })))).toEqual(named);
    expect(problemsOf(() => planBy(defined({ ...rule, way: "each-group" })))).toEqual(named);
    expect(problemsOf(() => planBy(defined({ ...rule, way: "once" })))).toEqual(named);
  });

  test("what is no list of answers", () => {
    for (const judge of [() => undefined, () => null, () => "blocking", () => 3, () => [undefined]]) {
      expect(problemsOf(() => pairBy(defined({ ...sound, judge }))).length).toBeGreaterThan(0);
    }
  });
});

test("a rule that cannot tell leaves the question open, as grave as it may yield", () => {
  const unsure = defined({ ...sound, mayYield: ["advisory", "blocking"], judge: () => "unknown" });
  const { outcome, bounds, findings } = pairBy(unsure);
  expect(findings).toEqual([]);
  expect(outcome).toBe("suitable");
  expect(bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
});

test("a rule that cannot tell asks what it lacks: of a plan that does not say, the facts that it reads", () => {
  const rule = defineRule({
    id: "x-warm",
    way: "once",
    reads: ["water.temperature", "water.pH", "tank.filledMass"],
    mayYield: ["restricting"],
    judge: ({ plan: { "water.temperature": found } }) => (found === undefined ? "unknown" : []),
  });
  const { tank, groups } = plan;
  const { open, bounds } = assessPlan({ tank, groups, water: { pH: 7 } }, { rules: [rule] });
  expect(open).toEqual([
    { rule: "x-warm", on: "water.temperature", reason: "not-given", couldBe: "restricting" },
  ]);
  expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
  expect(assessPlan(plan, { rules: [rule] }).open).toEqual([]);
});

test.each([
  ["pairs", { way: "mutual" }, pairBy],
  ["groups", { way: "each-group" }, planBy],
  ["plans", { way: "once" }, planBy],
] as const)("a rule of %s is forgotten once the app has done with it", async (_, way, judgeBy) => {
  const rules = Array.from({ length: 20 }, () => {
    const rule = defined({ ...sound, ...way });
    judgeBy(rule);
    return new WeakRef(rule);
  });
  expect(await stillHeld(rules)).toBe(0);
});
