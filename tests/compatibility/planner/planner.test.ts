import fc from "fast-check";
import { describe, expect, test } from "vitest";
import carinotetraodonTravancoricus from "vivary/catalog/carinotetraodon-travancoricus";
import danioRerio from "vivary/catalog/danio-rerio";
import potamotrygonMotoro from "vivary/catalog/potamotrygon-motoro";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import {
  assessPlan,
  counting,
  defineRule,
  type PlanChange,
  type Planner,
  planner,
} from "../../../src/compatibility";
import { withChange } from "../../../src/compatibility/planner/plan-change";
import { InvalidInputError } from "../../../src/errors";
import { lawgivers, type Plan } from "../../../src/plan";
import { applyForm, type SpeciesProfile } from "../../../src/species";
import { anySpecies } from "../../drawn";
import { expectRefused } from "../../refused";
import { runs } from "../../runs";
import { animal } from "../animals";
import { animals, fish, tanks, waters } from "../arbitrary";
import { profileOf } from "../worlds";

const species = fc.oneof(anySpecies, fish("a").map(profileOf));
const group = fc.tuple(species, animals).map(([kind, kept]) => ({ species: kind, ...kept }));
const offerings = fc.uniqueArray(
  fc.record({
    food: fc.constantFrom("dry" as const, "live" as const, "algae" as const),
    place: fc.constantFrom("surface" as const, "midwater" as const, "bottom" as const),
    light: fc.constantFrom("day" as const, "night" as const),
  }),
  { maxLength: 3 },
);
const jurisdiction = fc.uniqueArray(fc.constantFrom(...lawgivers), { maxLength: 2 });
const plans: fc.Arbitrary<Plan> = fc.record(
  { tank: tanks, water: waters, groups: fc.array(group, { minLength: 1, maxLength: 4 }), jurisdiction },
  { requiredKeys: ["tank", "water", "groups"] },
);

/** Some fields of something, each in place of what was there or taken away. */
const someOf = <Whole extends object>(wholes: fc.Arbitrary<Whole>, lasting: readonly string[] = []) =>
  fc.tuple(wholes, fc.infiniteStream(fc.integer({ min: 0, max: 5 }))).map(([whole, dice]) =>
    Object.fromEntries(
      Object.entries(whole).flatMap(([field, value]) => {
        const cast = dice.next().value;
        if (cast === 0) return lasting.includes(field) ? [] : [[field, undefined]];
        return cast < 3 ? [[field, value]] : [];
      }),
    ),
  );

/** A change to a plan of some groups; at least one of them stays. */
const changeOf = (groups: number): fc.Arbitrary<PlanChange> =>
  fc.oneof(
    fc.record({ tank: someOf(tanks, ["base"]) }),
    fc.record({ water: someOf(waters) }),
    fc.record({ offerings: fc.option(offerings, { nil: undefined }) }),
    fc.record({ jurisdiction: fc.option(jurisdiction, { nil: undefined }) }),
    fc.record({ add: fc.array(group, { minLength: 1, maxLength: 2 }) }),
    fc
      .tuple(fc.nat(groups - 1), fc.oneof(group, animals, fc.record({ form: fc.constant(undefined) })))
      .map(([index, different]) => ({ groups: { [index]: different } })),
    fc.nat(groups - 1).map((index) => (groups > 1 ? { groups: { [index]: null } } : { tank: { lid: true } })),
  );

/** The planner after a change; what would make no plan, such as a day hotter than the hottest, changes nothing. */
function afterIt(before: Planner, change: PlanChange): Planner {
  try {
    return before.with(change);
  } catch (error) {
    if (error instanceof InvalidInputError) return before;
    throw error;
  }
}

describe("a planner, after any changes", () => {
  const steps = fc.array(fc.nat(), { minLength: 1, maxLength: 5 });
  test("says of the plan what assessPlan says of it, byte for byte", () => {
    fc.assert(
      fc.property(plans, steps, fc.gen(), (plan, looks, draw) => {
        let current = planner(plan);
        for (const look of looks) {
          if (look % 2 === 0) expect(current.outcome).toBe(assessPlan(current.plan).outcome);
          current = afterIt(current, draw(changeOf, current.plan.groups.length));
        }
        const verdict = assessPlan(current.plan);
        expect(current.bounds).toEqual(verdict.bounds);
        expect(current.outcome).toBe(verdict.outcome);
        expect(JSON.stringify(current.verdict)).toBe(JSON.stringify(verdict));
      }),
      { numRuns: runs(50) },
    );
  }, 120_000);
});

/** An app's rule that looks at each group by itself, and asks for what the others are. */
const companyForEach = defineRule({
  id: "x-company",
  way: "each-group",
  needs: { from: ["social.settledBy"] },
  mayYield: ["restricting"],
  judge: () => [
    { weight: "restricting", condition: { on: "group.company", of: "from", wanted: { oneOf: [true] } } },
  ],
});

describe("a plan that is being made", () => {
  const start: Plan = {
    tank: { base: { shape: "rectangle", length: 80, width: 35 }, height: 40, lid: true },
    water: { temperature: 20, pH: 7 },
    groups: [{ species: tanichthysAlbonubes, unsexed: 10 }],
  };

  test("keeps its fields but for those that are different", () => {
    const { plan } = planner(start).with({ tank: { cover: 0.3 }, water: { pH: undefined } });
    expect(plan.tank).toEqual({ ...start.tank, cover: 0.3 });
    expect(plan.water).toEqual({ temperature: 20 });
  });

  test("gains a group at its end, and loses one in the middle", () => {
    const both = planner(start).with({ add: [{ species: danioRerio, unsexed: 8 }] });
    expect(both.plan.groups.map(({ species: { id } }) => id)).toEqual([
      "tanichthys-albonubes",
      "danio-rerio",
    ]);
    const { plan } = both.with({ groups: { 0: null } });
    expect(plan.groups.map(({ species: { id } }) => id)).toEqual(["danio-rerio"]);
  });

  test("has more of a group where its number is different", () => {
    const { plan } = planner(start).with({ groups: { 0: { unsexed: 4, males: 2 } } });
    expect(plan.groups).toEqual([{ species: tanichthysAlbonubes, unsexed: 4, males: 2 }]);
  });

  test("has no form any more where it is taken away, and refuses that of a profile that has it applied", () => {
    const ofGroup = (group: Plan["groups"][number]) => planner({ ...start, groups: [group] });
    const applied = applyForm(danioRerio, "long-fin");
    const named = ofGroup({ species: danioRerio, form: "long-fin", unsexed: 8 });
    const without = { groups: { 0: { form: undefined } } };
    expect(named.with(without).verdict.parties[0]?.form).toBeUndefined();
    for (const group of [{ species: applied }, { species: applied, form: "long-fin" }])
      expectRefused(() => ofGroup({ ...group, unsexed: 8 }).with(without), "change.groups.0.form");
    const replaced = ofGroup({ species: applied, unsexed: 8 }).with({
      groups: { 0: { species: danioRerio, form: undefined } },
    });
    expect(replaced.verdict.parties[0]?.form).toBeUndefined();
    const found = named.with({ groups: { 0: { species: applied, form: undefined } } });
    expect(found.verdict.parties[0]?.form).toBe("long-fin");
  });

  test("stays as it was for whoever looks at it before a change", () => {
    const before = planner(start);
    const after = before.with({ add: [{ species: carinotetraodonTravancoricus, unsexed: 6 }] });
    expect(after.verdict.findings.length).toBeGreaterThan(before.verdict.findings.length);
    expect(before.verdict).toEqual(assessPlan(start));
  });

  test("is judged by the profiles it has, whatever their ids", () => {
    const shy = animal("shy", { "social.settledBy": true, "predation.eats": [] });
    const calm = {
      "social.settles": true,
      "space.zones": ["midwater" as const],
      "social.group": { least: 6 },
    };
    const company = (settles: boolean) =>
      animal("calm", { ...calm, "social.settles": settles, "predation.eats": [] });
    const beside = (other: SpeciesProfile): Plan => ({
      ...start,
      groups: [
        { species: shy, unsexed: 1 },
        { species: other, unsexed: 8 },
      ],
    });
    const rules = [companyForEach];
    const settled = planner(beside(company(true)), { rules });
    expect(settled.verdict.met.map(({ from }) => from)).toContain(0);
    const unsettled = settled.with({ groups: { 1: { species: company(false) } } });
    expect(unsettled.verdict.findings.map(({ from }) => from)).toContain(0);
    expect(unsettled.verdict).toEqual(assessPlan(unsettled.plan, { rules }));
  });

  test("is judged once, however many ways lead on from it, and what they do not touch is not judged again", () => {
    let judged = 0;
    const ofGround = defineRule({
      id: "x-of-ground",
      way: "once",
      reads: ["tank.substrate"],
      mayYield: ["advisory"],
      judge: () => {
        judged += 1;
        return [];
      },
    });
    const before = planner(start, { rules: [ofGround] });
    for (const pH of [6, 6.5, 7, 7.5]) expect(before.with({ water: { pH } }).outcome).toBe("suitable");
    expect(judged).toBe(1);
    expect(before.with({ tank: { substrate: "sand" } }).outcome).toBe("suitable");
    expect(judged).toBe(2);
  });

  test("tells the laws of where the tank stands, and of where it is moved to", () => {
    const laws = ({ verdict }: Planner) =>
      verdict.findings.flatMap((finding) =>
        finding.rule === "caution-law" ? (finding.measures?.jurisdiction?.value ?? []) : [],
      );
    const ray = planner({
      tank: { base: { shape: "rectangle", length: 400, width: 200 } },
      groups: [{ species: potamotrygonMotoro, unsexed: 1 }],
    });
    const there = ray.with({ jurisdiction: ["us-florida"] });
    expect(laws(there)).toContain("Florida (United States)");
    expect(laws(there.with({ jurisdiction: ["germany"] }))).not.toContain("Florida (United States)");
    expect(there.with({ jurisdiction: undefined }).plan).toEqual(ray.plan);
    expect(there.with({ jurisdiction: undefined }).verdict).toEqual(ray.verdict);
  });

  test("is a copy: changing what was given changes nothing", () => {
    const given = structuredClone({ tank: start.tank, water: start.water });
    const held = planner({ ...given, groups: start.groups });
    Object.assign(given.tank, { lid: false });
    expect(held.plan.tank.lid).toBe(true);
    expect(held.verdict).toEqual(assessPlan(start));
  });

  test.each<[string, object, string]>([
    ["a part that no plan has", { fish: [] }, "change.fish"],
    ["a group that is not there", { groups: { 3: { males: 1 } } }, "change.groups.3"],
    ["what are no fields", { tank: 3 }, "change.tank"],
    ["a list of fields", { water: [7] }, "change.water"],
    ["the length of the groups", { groups: { length: {} } }, "change.groups.length"],
    ["a list of groups, and tells the shape wanted", { groups: start.groups }, "such as { 0: { males: 2 } }"],
    ["a list of groups, and tells where new ones go", { groups: [{ males: 1 }] }, "new groups as `add`"],
    ["a number in place of a group", { groups: { 0: 5 } }, "change.groups.0: expected fields"],
    ["a yes in place of a group", { groups: { 0: true } }, "or null to take it out, found true"],
    ["nothing in place of a group", { groups: { 0: undefined } }, "change.groups.0"],
    ["groups that are no list", { add: {} }, "change.add"],
    ["a temperature that no water has", { water: { temperature: 400 } }, "water.temperature"],
    ["no group at all", { groups: { 0: null } }, "groups"],
  ])("refuses %s", (_, change, where) => {
    expect(() => planner(start).with(change)).toThrow(where);
  });

  test.each([
    { tank: { cover: 2 } },
    { tank: { colour: "blue" } },
    { tank: { flow: { calmest: "strong", strongest: "still" } } },
    { tank: { base: { shape: "rectangle", length: -1, width: 30 } } },
    { water: { pH: 70 } },
    { water: { coolest: 26, temperature: 22 } },
    { offerings: [{ food: "cake", place: "surface" }] },
    { jurisdiction: ["atlantis"] },
    { groups: { 0: { unsexed: -1 } } },
    { groups: { 0: { males: 0, females: 0, unsexed: 0, juveniles: 0 } } },
    { groups: { 0: { form: "square" } } },
    { add: [{ unsexed: 3 }] },
  ])("refuses as assessPlan does, at the first step and later: %o", (change) => {
    const refusal = (run: () => unknown) => {
      try {
        run();
      } catch (error) {
        return JSON.stringify(Object(error).problems);
      }
      throw new Error("nothing was refused");
    };
    const changed = withChange(start, change as PlanChange);
    const refused = refusal(() => assessPlan(changed));
    const first = planner(start);
    const later = first.with({ water: { temperature: 25 } }).with({ tank: { cover: 0.3 } });
    for (const before of [first, later.with({ water: start.water ?? {}, tank: { cover: start.tank.cover } })])
      expect(refusal(() => before.with(change as PlanChange).outcome)).toBe(refused);
  });
});

test("a rule of each group that counts all of them is judged anew where another group grows", () => {
  const crowded = defineRule({
    id: "x-crowded",
    way: "each-group",
    uses: { from: ["social.living"] },
    sums: counting,
    mayYield: ["advisory"],
    measures: { crowd: "count" },
    judge: ({ crowd }) => [{ weight: "advisory", measures: { crowd: crowd.of({ id: "danio-rerio" }) } }],
  });
  const plan: Plan = {
    tank: { base: { shape: "rectangle", length: 100, width: 40 } },
    groups: [
      { species: tanichthysAlbonubes, unsexed: 10 },
      { species: danioRerio, unsexed: 10 },
    ],
  };
  const options = { rules: [crowded] };
  const step = planner(plan, options).with({ groups: { 1: { unsexed: 15 } } });
  expect(step.verdict).toEqual(assessPlan(step.plan, options));
  expect(step.verdict.findings).toMatchObject([{ measures: { crowd: { value: 15 } } }, {}]);
});
