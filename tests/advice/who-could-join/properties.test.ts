import fc from "fast-check";
import { expect, test } from "vitest";
import shrimp from "vivary/catalog/atyopsis-moluccensis";
import danioRerio from "vivary/catalog/danio-rerio";
import { whoCouldJoin } from "../../../src/advice";
import { type AssessOptions, assessPlan, defineRule, pairRules, planRules } from "../../../src/compatibility";
import type { Plan } from "../../../src/plan";
import { type SpeciesProfile, splitPath, traitPaths } from "../../../src/species";
import { anySpecies } from "../../drawn";
import { tanks, waters } from "../../plan/arbitrary";
import { runs } from "../../runs";
import { becauseOfAll } from "./by-assessing-all";
import { eachAlone } from "./by-assessing-each";

type Path = (typeof traitPaths)[number];

/** A species of which some traits are not known. */
function lesserKnown(species: SpeciesProfile, paths: readonly Path[]): SpeciesProfile {
  const copy = JSON.parse(JSON.stringify(species));
  for (const path of paths) {
    const [section, trait] = splitPath(path);
    if (copy[section]) delete copy[section][trait];
  }
  return copy;
}

/** Traits of which any may be missing, those that conditions look at most often. */
const missing = fc.uniqueArray(
  fc.oneof(
    fc.constantFrom<Path>("social.settles", "social.group", "space.hides", "diet.light"),
    fc.constantFrom(...traitPaths),
  ),
  { minLength: 1, maxLength: 4 },
);

const species = fc.oneof(
  { weight: 2, arbitrary: anySpecies },
  {
    weight: 1,
    arbitrary: fc.tuple(anySpecies, missing).map(([one, paths]) => lesserKnown(one, paths)),
  },
);

const plans: fc.Arbitrary<Plan> = fc.record({
  tank: fc.record(
    {
      base: fc.record({
        shape: fc.constant("rectangle" as const),
        length: fc.integer({ min: 60, max: 200 }),
        width: fc.integer({ min: 30, max: 70 }),
      }),
      height: fc.constant(50),
      lid: fc.boolean(),
      cover: fc.constantFrom(0.2, 0.4, 0.8),
      sightBreaks: fc.constantFrom(0, 4),
      hides: fc.constant({ caves: 4, wood: 3, leaves: 10 }),
      filter: fc.record({ mediaArea: fc.constantFrom(0.5, 20), age: fc.constant(200) }),
    },
    { requiredKeys: ["base"] },
  ),
  water: fc.record(
    { temperature: fc.integer({ min: 22, max: 27 }), pH: fc.constantFrom(6.5, 7.2) },
    { requiredKeys: [] },
  ),
  groups: fc.array(fc.record({ species, unsexed: fc.integer({ min: 1, max: 10 }) }), {
    minLength: 1,
    maxLength: 3,
  }),
});

/** A rule of an app that hangs on who else is there. */
const settled = defineRule({
  id: "x-settled",
  way: "each-group",
  needs: { from: ["temperament.shy"] },
  mayYield: ["restricting"],
  judge: ({ from }) =>
    from["temperament.shy"]
      ? [{ weight: "restricting", condition: { on: "group.company", of: "from", wanted: { oneOf: [true] } } }]
      : [],
});

/** A rule of an app that some animals break, whoever else is there. */
const oddOnes = defineRule({
  id: "x-odd-ones",
  way: "each-group",
  mayYield: ["blocking"],
  judge: ({ from }) => (from.party.id.length % 2 === 1 ? [{ weight: "blocking" }] : []),
});

const rules: fc.Arbitrary<AssessOptions> = fc.oneof(
  { weight: 3, arbitrary: fc.constant({}) },
  { weight: 1, arbitrary: fc.constantFrom({ rules: pairRules }, { rules: [settled, ...planRules] }) },
);

/** Refuses what judging whole plans refuses, for the same reasons; how many that are. */
function refusedAsByAll(plan: Plan, others: readonly SpeciesProfile[], options: AssessOptions): number {
  const candidates = [...others, ...plan.groups.map((group) => group.species)];
  const { joins, refused } = whoCouldJoin(plan, candidates, options);
  const reasons = becauseOfAll(plan, candidates, options);
  const expected = candidates.flatMap((one, index) =>
    reasons[index] ? [{ species: one.id, because: reasons[index] }] : [],
  );
  expect(refused.map(({ species: one, because }) => ({ species: one.id, because }))).toEqual(expected);
  expect(joins.length).toBe(candidates.length - expected.length);
  return expected.length;
}

const candidates = fc.array(species, { minLength: 1, maxLength: 4 });

test("each candidate joins or is refused for the reason that judging the whole plan with it gives", () => {
  let refusals = 0;
  fc.assert(
    fc.property(plans, candidates, rules, (plan, others, options) => {
      refusals += refusedAsByAll(plan, others, options);
    }),
    { numRuns: runs(30) },
  );
  expect(refusals).toBeGreaterThan(20);
});

test("nor is overlooked what conditions look at and no rule does", () => {
  let refusals = 0;
  fc.assert(
    fc.property(plans, candidates, (plan, others) => {
      refusals += refusedAsByAll(plan, others, { rules: [oddOnes, settled] });
    }),
    { numRuns: runs(200) },
  );
  expect(refusals).toBeGreaterThan(20);
});

/** Danios, which are fast, in a tank that has all that shrimps which sift the water need, but for time to feed. */
const danios: Plan = {
  tank: {
    base: { shape: "rectangle", length: 150, width: 50 },
    height: 50,
    lid: true,
    cover: 0.4,
    sightBreaks: 4,
    hides: { caves: 4, wood: 3, leaves: 10 },
    filter: { mediaArea: 20, age: 200 },
  },
  water: { temperature: 25, pH: 7.2 },
  groups: [{ species: danioRerio, unsexed: 8 }],
};

test("what is told of who joins is what the verdict on the plan with it says", () => {
  let [joined, robbing] = [0, 0];
  fc.assert(
    fc.property(plans, species, (plan, candidate) => {
      const [joining] = whoCouldJoin(plan, [candidate]).joins;
      if (!joining) return;
      const { outcome, findings, met } = assessPlan({ ...plan, groups: [...plan.groups, joining.group] });
      expect(joining.outcome).toBe(outcome);
      const told = [...findings, ...met].filter(({ weight }) => weight !== "favourable");
      const robbed = told.filter(
        ({ rule, to }) => rule === "feeding-competition" && to === plan.groups.length,
      );
      expect(new Set(joining.robbedBy)).toEqual(new Set(robbed.map(({ from }) => from)));
      joined += 1;
      robbing += robbed.length;
    }),
    { numRuns: runs(120), examples: [[danios, shrimp]] },
  );
  expect(joined).toBeGreaterThanOrEqual(runs(10));
  expect(robbing).toBeGreaterThan(0);
});

test("in a tank without animals live those whom judging each of them alone lets live there", () => {
  let [living, refusals] = [0, 0];
  const furnished = plans.map((plan) => ({ ...plan, groups: [] }));
  const empty = fc.oneof(fc.record({ tank: tanks, water: waters, groups: fc.constant([]) }), furnished);
  fc.assert(
    fc.property(empty, fc.array(species, { minLength: 1, maxLength: 8 }), rules, (plan, some, options) => {
      const { joins, refused } = whoCouldJoin(plan, some, options);
      expect([
        ...joins.map(({ species: { id }, outcome, margin }) => ({ species: id, outcome, margin })),
        ...refused.map(({ species: { id }, because }) => ({ species: id, because })),
      ]).toEqual(eachAlone(plan, some, options));
      living += joins.length;
      refusals += refused.length;
    }),
    { numRuns: runs(60) },
  );
  expect(living).toBeGreaterThan(10);
  expect(refusals).toBeGreaterThan(20);
});
