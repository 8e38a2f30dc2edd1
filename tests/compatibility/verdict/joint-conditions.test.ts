import { describe, expect, test } from "vitest";
import cyprichromisLeptosoma from "vivary/catalog/cyprichromis-leptosoma";
import misgurnusAnguillicaudatus from "vivary/catalog/misgurnus-anguillicaudatus";
import satanopercaLeucosticta from "vivary/catalog/satanoperca-leucosticta";
import {
  type AimedCondition,
  assessPlan,
  defineRule,
  type JointCondition,
  planRules,
  planThatMeets,
  type Rule,
} from "../../../src/compatibility";
import { isMet, type Plan } from "../../../src/plan";
import { runs, seedOf } from "../../runs";
import { animal } from "../animals";
import { planOf } from "../judging";
import { randomPlans } from "../promise";

/** A condition of the tank or its water. */
type Asked = Omit<AimedCondition, "of">;

/** An app's rule that asks this of every plan. */
const asking = (id: `x-${string}`, condition: Asked): Rule =>
  defineRule({
    id,
    way: "once",
    mayYield: ["restricting"],
    judge: () => [{ weight: "restricting", condition }],
  });
const verdictOf = (...conditions: readonly Asked[]) => {
  const rules = conditions.map((condition, index) => asking(`x-${"abcdef"[index] ?? "g"}`, condition));
  return assessPlan(
    {
      tank: { base: { shape: "rectangle", length: 60, width: 30 } },
      groups: [{ species: animal("fish"), unsexed: 1 }],
    },
    { rules },
  );
};
const warm = (wanted: AimedCondition["wanted"], aim?: AimedCondition["aim"]) =>
  ({ on: "water.temperature", wanted, ...(aim && { aim }) }) as const;
const aimOf = (...conditions: readonly Asked[]) => verdictOf(...conditions).conditions[0]?.aim;

describe("what to aim at within what is wanted", () => {
  test("is nothing where words are wanted, which have no middle", () => {
    const sand: Asked = { on: "tank.substrate", wanted: { oneOf: ["sand"] }, aim: { min: 1 } };
    expect(aimOf(sand)).toBeUndefined();
  });

  test("is what all are kept in", () => {
    const cool = warm({ min: 19.5, max: 24.5 }, { min: 20, max: 24 });
    const mild = warm({ min: 21.5, max: 28.5 }, { min: 22, max: 28 });
    expect(verdictOf(cool, mild).conditions).toEqual([
      {
        on: "water.temperature",
        wanted: { min: 21.5, max: 24.5, unit: "degC" },
        aim: { min: 22, max: 24 },
        findings: [0, 1],
      },
    ]);
    expect(aimOf(mild, cool)).toEqual({ min: 22, max: 24 });
  });

  test("is the middle of what is wanted where those share nothing, whoever else joins", () => {
    const cool = warm({ min: 17.5, max: 22.5 }, { min: 18, max: 22 });
    const mild = warm({ min: 22, max: 26.5 }, { min: 22.5, max: 26 });
    const wide = warm({ min: 9.5, max: 30.5 }, { min: 10, max: 30 });
    for (const all of [
      [cool, mild],
      [cool, mild, wide],
      [wide, cool, mild],
      [mild, wide, cool],
    ]) {
      expect(aimOf(...all)).toEqual({ min: 22.25, max: 22.25 });
    }
  });

  test("never lies outside what is wanted", () => {
    expect(aimOf(warm({ min: 20, max: 24 }, { min: 10, max: 22 }))).toEqual({ min: 20, max: 22 });
    expect(aimOf(warm({ min: 20, max: 24 }, { min: 10, max: 12 }))).toEqual({ min: 22, max: 22 });
  });

  test("is none where nobody says what it is kept in", () => {
    expect(verdictOf(warm({ min: 20, max: 24 })).conditions[0]).not.toHaveProperty("aim");
  });
});

describe("conditions that exclude each other", () => {
  test.each<readonly [string, Asked, Asked]>([
    ["two spans of one fact that share nothing", warm({ max: 20 }), warm({ min: 24 })],
    [
      "two grounds",
      { on: "tank.substrate", wanted: { oneOf: ["sand"] } },
      { on: "tank.substrate", wanted: { oneOf: ["pebbles", "bare"] } },
    ],
    [
      "more cover than the open water leaves",
      { on: "tank.cover", wanted: { min: 0.5 } },
      { on: "tank.openWater", wanted: { min: 0.6 } },
    ],
    [
      "a coolest season warmer than the hottest day",
      { on: "water.coolest", wanted: { min: 24 } },
      { on: "water.hottest", wanted: { max: 22 } },
    ],
    ["a hottest day cooler than usual", warm({ min: 24 }), { on: "water.hottest", wanted: { max: 22 } }],
    ["a coolest season warmer than usual", { on: "water.coolest", wanted: { min: 24 } }, warm({ max: 22 })],
  ])("%s", (_, one, other) => {
    const verdict = verdictOf(one, other);
    expect(verdict).toMatchObject({ outcome: "unsuitable", bounds: { atWorst: "unsuitable" } });
    expect(verdict.conditions).toHaveLength(2);
    expect(verdict.conditions.map(({ excludes }) => excludes)).toEqual([[1], [0]]);
    expect(verdict.findings).toHaveLength(3);
    expect(verdict.findings[2]).toMatchObject({
      rule: "conditions-exclude",
      weight: "blocking",
      measures: { one: { value: one.on }, other: { value: other.on } },
    });
    expect(JSON.parse(JSON.stringify(verdict))).toStrictEqual(verdict);
  });

  test.each<readonly [string, Asked, Asked]>([
    [
      "cover and open water that share the tank to the last",
      { on: "tank.cover", wanted: { min: 0.3 } },
      { on: "tank.openWater", wanted: { min: 0.7 } },
    ],
    [
      "a coolest season and a hottest day that are the same",
      { on: "water.coolest", wanted: { min: 24 } },
      { on: "water.hottest", wanted: { max: 24 } },
    ],
    ["a hot day above what is usual", warm({ max: 22 }), { on: "water.hottest", wanted: { min: 24 } }],
    [
      "a run and a floor",
      { on: "tank.longestRun", wanted: { min: 200 } },
      { on: "tank.footprint", wanted: { min: 900 } },
    ],
  ])("but not %s", (_, one, other) => {
    const { outcome, conditions } = verdictOf(one, other);
    expect(outcome).toBe("conditional");
    expect(conditions.flatMap(({ excludes }) => excludes ?? [])).toEqual([]);
  });

  test("name the two whose findings ask for them, and rest on what those rest on", () => {
    const [swimmer, hider] = [
      animal("swimmer", { "space.openWater": 0.7 }),
      animal("hider", { "space.cover": 0.5 }),
    ];
    const groups = [swimmer, hider].map((species) => ({ species, unsexed: 1 }));
    const excluded = assessPlan(planOf(groups), { rules: planRules }).findings.find(
      ({ rule }) => rule === "conditions-exclude",
    );
    expect(new Set([excluded?.from, excluded?.to])).toEqual(new Set([0, 1]));
    expect(excluded?.traits).toEqual(expect.arrayContaining(["space.cover", "space.openWater"]));
  });

  test("name the same parties in whatever order the groups stand, though three exclude each other", () => {
    const standing = (...spans: readonly (readonly [number, number])[]) =>
      assessPlan(
        planOf(
          spans.map(([min, max]) => ({
            species: animal(`fish-${min}`, { "water.salinity": { kept: { min, max } } }),
            unsexed: 1,
          })),
        ),
        { rules: planRules },
      ).findings.flatMap(({ rule, from, to }) => (rule === "conditions-exclude" ? [[from, to]] : []));
    const [low, middle, high] = [
      [1, 4],
      [3, 7],
      [6, 9],
    ] as const;
    expect(standing(low, middle, high)).toEqual([[0, 2]]);
    expect(standing(middle, low, high)).toEqual([[1, 2]]);
    expect(standing(high, low, middle)).toEqual([[0, 1]]);
  });

  test("are joined alike in whatever order the groups stand, though one could be met along with either of two", () => {
    const spans = [
      { min: 22.5, max: 27.5 },
      { min: 14.5, max: 22.5 },
      { min: 23.5, max: 28.5 },
    ];
    const joined = (...order: readonly number[]) => {
      const { conditions } = verdictOf(...order.map((place) => warm(spans[place] ?? {})));
      return new Set(conditions.map(({ wanted }) => JSON.stringify(Object.entries(wanted).sort())));
    };
    const usual = joined(0, 1, 2);
    expect(usual.size).toBe(2);
    for (const order of [
      [0, 2, 1],
      [1, 0, 2],
      [1, 2, 0],
      [2, 0, 1],
      [2, 1, 0],
    ])
      expect(joined(...order)).toEqual(usual);
  });

  test("are found where each two share a ground, and all together none", () => {
    const on = "tank.substrate";
    const { outcome, bounds, findings, conditions } = verdictOf(
      { on, wanted: { oneOf: ["bare", "sand"] } },
      { on, wanted: { oneOf: ["sand", "pebbles"] } },
      { on, wanted: { oneOf: ["pebbles", "bare"] } },
    );
    expect({ outcome, atWorst: bounds.atWorst }).toEqual({ outcome: "unsuitable", atWorst: "unsuitable" });
    expect(findings.at(-1)?.rule).toBe("conditions-exclude");
    expect(conditions.map(({ excludes }) => excludes)).toEqual([[1], [0]]);
  });
});

describe("of one fact and one party there are several conditions", () => {
  const plans = randomPlans(runs(60), seedOf(0));
  const sharing = plans.flatMap((plan) => {
    const { conditions } = assessPlan(plan);
    const isOfOne = (one: JointCondition, other: JointCondition) =>
      one !== other && one.on === other.on && one.of === other.of;
    return conditions.flatMap((one) =>
      conditions.filter((other) => isOfOne(one, other)).map((other) => ({ one, other, conditions })),
    );
  });

  test("only of food, which excludes nothing, and where these exclude each other", () => {
    expect(sharing.length).toBeGreaterThan(10);
    for (const { one, other, conditions } of sharing) {
      const isFood = one.on === "group.offerings";
      expect(one.excludes?.includes(conditions.indexOf(other)) ?? false).toBe(!isFood);
    }
  });

  test("and what excludes anything rules the plan out, or nobody can tell", () => {
    for (const plan of plans) {
      const { conditions, outcome } = assessPlan(plan);
      for (const [place, { excludes = [] }] of conditions.entries()) {
        for (const other of excludes) expect(conditions[other]?.excludes).toContain(place);
        if (excludes.length > 0) expect(["unsuitable", "undetermined"]).toContain(outcome);
      }
    }
  });
});

test("meeting one of two conditions that exclude each other loses the other", () => {
  const plan: Plan = {
    tank: { base: { shape: "rectangle", length: 250, width: 60 }, height: 60 },
    water: { temperature: 24 },
    groups: [misgurnusAnguillicaudatus, satanopercaLeucosticta, cyprichromisLeptosoma].map((species) => ({
      species,
      unsexed: 6,
    })),
  };
  const { conditions, findings } = assessPlan(plan);
  const [acid, alkaline] = conditions.filter(({ on }) => on === "water.pH");
  if (!acid || !alkaline) throw new Error("one water for all");
  expect(findings.map(({ rule }) => rule)).not.toContain("conditions-exclude");
  expect(acid.excludes).toEqual([conditions.indexOf(alkaline)]);
  const first = planThatMeets(acid, plan);
  const both = first && planThatMeets(alkaline, first);
  expect(both && [isMet(acid, both), isMet(alkaline, both)]).toEqual([false, true]);
});
