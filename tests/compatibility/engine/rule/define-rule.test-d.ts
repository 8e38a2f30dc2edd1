import { expectTypeOf, test } from "vitest";
import {
  type AssessOptions,
  assessPair,
  defineRule,
  type Judged,
  pairRules,
  planRules,
  type Rule,
} from "../../../../src/compatibility";
import type { SpeciesProfile, TraitValue as Value } from "../../../../src/species";

declare const species: SpeciesProfile;

test("a rule sees the traits it declares, those it merely uses perhaps not", () => {
  defineRule({
    id: "x-declared",
    way: "each-way",
    needs: { from: ["water.pH"], to: ["space.zones"] },
    uses: { from: ["social.group"], to: [] },
    mayYield: ["advisory"],
    judge: ({ from, to }) => {
      expectTypeOf(from["water.pH"]).toEqualTypeOf<Value<"water.pH">>();
      expectTypeOf(to["space.zones"]).toEqualTypeOf<Value<"space.zones">>();
      expectTypeOf(from["social.group"]).toEqualTypeOf<Value<"social.group"> | undefined>();
      return [];
    },
  });
});

test("a trait that is not declared is not there", () => {
  defineRule({
    id: "x-undeclared",
    way: "mutual",
    needs: { from: ["water.pH"], to: [] },
    mayYield: ["advisory"],
    // @ts-expect-error: the other side's pH is not declared
    judge: ({ to }) => (to["water.pH"] ? [{ weight: "advisory" }] : []),
  });
  defineRule({
    id: "x-undeclared-in-plan",
    way: "each-group",
    needs: { from: ["water.pH"] },
    mayYield: ["advisory"],
    // @ts-expect-error: the temperature is not declared
    judge: ({ from }) => (from["water.temperature"] ? [{ weight: "advisory" }] : []),
  });
});

const common = { way: "mutual", mayYield: ["advisory"] } as const;

test("a path that is no trait does not compile", () => {
  const judge = () => [];
  const [known, unknown] = [
    { from: ["water.pH"], to: [] },
    { from: ["water.colour"], to: [] },
  ] as const;
  defineRule({ ...common, id: "x-known-path", needs: known, judge });
  // @ts-expect-error: there is no such trait
  defineRule({ ...common, id: "x-unknown-path", needs: unknown, judge });
});

test("a weight that is not announced does not compile", () => {
  const needs = { from: [], to: [] } as const;
  const advises = (): readonly Judged<"advisory">[] => [];
  const blocks = (): readonly Judged<"blocking">[] => [];
  defineRule({ ...common, id: "x-announced", needs, judge: advises });
  // @ts-expect-error: blocking is not among mayYield
  defineRule({ ...common, id: "x-unannounced", needs, judge: blocks });
});

test("a restricting finding without a condition does not compile", () => {
  defineRule({
    id: "x-unconditional",
    way: "mutual",
    needs: { from: [], to: [] },
    mayYield: ["restricting"],
    // @ts-expect-error: the condition is missing
    judge: () => [{ weight: "restricting" }],
  });
  defineRule({
    id: "x-conditional",
    way: "mutual",
    needs: { from: [], to: [] },
    mayYield: ["restricting"],
    judge: () => [{ weight: "restricting", condition: { on: "tank.lid", wanted: { oneOf: [true] } } }],
  });
});

test("a condition is about a fact a plan has", () => {
  const once = { way: "once", mayYield: ["restricting"] } as const;
  const lid = () =>
    [{ weight: "restricting", condition: { on: "tank.lid", wanted: { oneOf: [true] } } }] as const;
  const colour = () =>
    [{ weight: "restricting", condition: { on: "tank.colour", wanted: { oneOf: [true] } } }] as const;
  defineRule({ ...once, id: "x-known-fact", judge: lid });
  // @ts-expect-error: a plan has no such fact
  defineRule({ ...once, id: "x-unknown-fact", judge: colour });
});

test("the library's rules have their ids for names, and fit beside an app's", () => {
  expectTypeOf<"predation">().toExtend<(typeof pairRules)[number]["id"]>();
  expectTypeOf<"lid">().toExtend<(typeof planRules)[number]["id"]>();
  expectTypeOf<"no-such-rule">().not.toExtend<(typeof pairRules)[number]["id"]>();
  expectTypeOf([...pairRules, ...planRules]).toExtend<readonly Rule[]>();
  expectTypeOf<AssessOptions["rules"]>().toEqualTypeOf<readonly Rule[] | undefined>();
});

test("sex and stage are closed lists, findings of weight restricting have a condition", () => {
  // @ts-expect-error: no such sex
  assessPair({ species, sex: "hen" }, { species });
  // @ts-expect-error: no such stage
  assessPair({ species, stage: "old" }, { species });
  const [finding] = assessPair({ species }, { species }).findings;
  if (finding?.weight === "restricting") expectTypeOf(finding.condition.on).toBeString();
  // @ts-expect-error: findings of other weights have none
  if (finding?.weight === "blocking") finding.condition;
});
