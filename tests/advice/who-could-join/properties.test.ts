import fc from "fast-check";
import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { whoCouldJoin } from "../../../src/advice";
import { type AssessOptions, assessPlan, defineRule, pairRules, planRules } from "../../../src/compatibility";
import type { Plan } from "../../../src/plan";
import { type SpeciesProfile, splitPath, traitPaths } from "../../../src/species";
import { runs } from "../../runs";
import { becauseOfAll } from "./by-assessing-all";

/** A species of which some trait is not known. */
function lesserKnown(species: SpeciesProfile, path: (typeof traitPaths)[number]): SpeciesProfile {
  const copy = JSON.parse(JSON.stringify(species));
  const [section, trait] = splitPath(path);
  if (copy[section]) delete copy[section][trait];
  return copy;
}

const species = fc.oneof(
  { weight: 2, arbitrary: fc.constantFrom(...allSpecies) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom(...allSpecies), fc.constantFrom(...traitPaths))
      .map(([one, path]) => lesserKnown(one, path)),
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

const rules: fc.Arbitrary<AssessOptions> = fc.oneof(
  { weight: 3, arbitrary: fc.constant({}) },
  { weight: 1, arbitrary: fc.constantFrom({ rules: pairRules }, { rules: [settled, ...planRules] }) },
);

test("each candidate joins or is refused for the reason that judging the whole plan with it gives", () => {
  let refusals = 0;
  fc.assert(
    fc.property(plans, fc.array(species, { minLength: 1, maxLength: 4 }), rules, (plan, others, options) => {
      const candidates = [...others, ...plan.groups.map((group) => group.species)];
      const { joins, refused } = whoCouldJoin(plan, candidates, options);
      const reasons = becauseOfAll(plan, candidates, options);
      const expected = candidates.flatMap((one, index) =>
        reasons[index] ? [{ species: one.id, because: reasons[index] }] : [],
      );
      expect(refused.map(({ species: one, because }) => ({ species: one.id, because }))).toEqual(expected);
      expect(joins.length).toBe(candidates.length - expected.length);
      refusals += expected.length;
    }),
    { numRuns: runs(30) },
  );
  expect(refusals).toBeGreaterThan(20);
});

test("what is told of who joins is what the verdict on the plan with it says", () => {
  fc.assert(
    fc.property(plans, species, (plan, candidate) => {
      const [joining] = whoCouldJoin(plan, [candidate]).joins;
      if (!joining) return;
      const { findings, met } = assessPlan({ ...plan, groups: [...plan.groups, joining.group] });
      const told = [...findings, ...met].filter(({ weight }) => weight !== "favourable");
      const robbed = told.filter(
        ({ rule, to }) => rule === "feeding-competition" && to === plan.groups.length,
      );
      expect(new Set(joining.robbedBy)).toEqual(new Set(robbed.map(({ from }) => from)));
    }),
    { numRuns: runs(20) },
  );
});
