import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  assessPair,
  assessPlan,
  type Finding,
  pairRules,
  planRules,
  type Rule,
} from "../../../src/compatibility";
import { isPairRule } from "../../../src/compatibility/engine/rule/rule";
import { meeting as alsoMeeting } from "../../../src/compatibility/meeting/meeting";
import type { Condition, Group, Offering, Party, Plan, PlannedTank, PlannedWater } from "../../../src/plan";
import type { PartialRange } from "../../../src/ranges";
import { classes, type SpeciesProfile } from "../../../src/species";
import { anySpecies } from "../../drawn";
import { runs, seedOf } from "../../runs";
import { animal } from "../animals";
import { animals, fish, tanks, waters } from "../arbitrary";
import { traitsOf } from "../deciding";
import { lieWithin, outcomeOf, rank } from "../ranks";
import { choices, type Disputed, profileOf, without, worldsOf } from "../worlds";

const party = fc.record(
  {
    sex: fc.constantFrom("male" as const, "female" as const),
    stage: fc.constantFrom("fry" as const, "juvenile" as const, "adult" as const),
    count: fc.integer({ min: 1, max: 3 }),
    length: fc.constantFrom(1, 3.5, 6),
  },
  { requiredKeys: [] },
) satisfies fc.Arbitrary<Omit<Party, "species">>;

const pairsOf = (paths?: readonly string[]) =>
  fc.record({
    a: fc.tuple(fish("a", paths), party),
    b: fc.tuple(fish("b", paths), party),
  });

type Kept = Omit<Group, "species">;

interface Stocked {
  readonly tank: PlannedTank;
  readonly water: PlannedWater;
  readonly species: readonly Disputed[];
  /** Groups, each of one of the species. */
  readonly groups: readonly { readonly of: number; readonly kept: Kept }[];
}

/** Plans of one to three groups of two species, so that a species may stand in two groups. */
const plansOf = (paths?: readonly string[]): fc.Arbitrary<Stocked> =>
  fc.record({
    tank: tanks,
    water: waters,
    species: fc.tuple(fish("a", paths), fish("b", paths)),
    groups: fc.array(fc.record({ of: fc.constantFrom(0, 1), kept: animals }), { minLength: 1, maxLength: 3 }),
  });

const plans = plansOf();

function planned({ tank, water, groups }: Stocked, profiles: readonly SpeciesProfile[]): Plan {
  return {
    tank,
    water,
    groups: groups.flatMap(({ of, kept }) => {
      const species = profiles[of];
      return species ? [{ species, ...kept }] : [];
    }),
  };
}

const replaced = <Item>(list: readonly Item[], at: number, by: Item) =>
  list.map((item, index) => (index === at ? by : item));

const assessed = (stocked: Stocked, rules?: readonly Rule[]) =>
  assessPlan(planned(stocked, stocked.species.map(profileOf)), { rules });

const rules: readonly Rule[] = [...planRules, ...pairRules];

/** How often each rule is tried in each of several ways. */
const alike = { numRuns: runs(12) };

describe.each(rules.map((rule) => [rule.id, rule] as const))("the bounds of %s alone", (_, rule) => {
  const alone = { rules: [rule] };
  const paths = traitsOf(rule);

  if (isPairRule(rule))
    test("hold every scenario of a pair, and its own answer", () => {
      fc.assert(
        fc.property(pairsOf(paths), ({ a: [a, asA], b: [b, asB] }) => {
          const { bounds, outcome } = assessPair(
            { species: profileOf(a), ...asA },
            { species: profileOf(b), ...asB },
            alone,
          );
          if (outcome !== "undetermined") {
            expect(lieWithin({ atBest: outcome, atWorst: outcome }, bounds)).toBe(true);
          }
          for (const from of worldsOf(a)) {
            for (const to of worldsOf(b)) {
              const world = assessPair({ species: from, ...asA }, { species: to, ...asB }, alone);
              expect(lieWithin(world.bounds, bounds)).toBe(true);
            }
          }
        }),
        alike,
      );
    });

  test("hold every scenario of a plan, and its own answer", () => {
    fc.assert(
      fc.property(plansOf(paths), (stocked) => {
        const { bounds, outcome } = assessed(stocked, [rule]);
        if (outcome !== "undetermined") {
          expect(lieWithin({ atBest: outcome, atWorst: outcome }, bounds)).toBe(true);
        }
        for (const world of choices(stocked.species.map(worldsOf))) {
          expect(lieWithin(assessPlan(planned(stocked, world), alone).bounds, bounds)).toBe(true);
        }
      }),
      alike,
    );
  });

  if (isPairRule(rule))
    test("never narrow for a pair when a fact is taken away", () => {
      fc.assert(
        fc.property(pairsOf(paths), ({ a: [a, asA], b: [b, asB] }) => {
          const boundsOf = (from: Disputed, to: Disputed) =>
            assessPair({ species: profileOf(from), ...asA }, { species: profileOf(to), ...asB }, alone)
              .bounds;
          const bounds = boundsOf(a, b);
          for (const path of paths) {
            expect(lieWithin(bounds, boundsOf(without(a, path), b)), `a without ${path}`).toBe(true);
            expect(lieWithin(bounds, boundsOf(a, without(b, path))), `b without ${path}`).toBe(true);
          }
        }),
        alike,
      );
    });

  if (paths.length > 0)
    test("never narrow for a plan when a fact is taken away", () => {
      fc.assert(
        fc.property(plansOf(paths), (stocked) => {
          const { bounds } = assessed(stocked, [rule]);
          for (const [index, fishes] of stocked.species.entries()) {
            for (const path of paths) {
              const species = replaced(stocked.species, index, without(fishes, path));
              const fewer = assessed({ ...stocked, species }, [rule]).bounds;
              expect(lieWithin(bounds, fewer), `${fishes.id} without ${path}`).toBe(true);
            }
          }
        }),
        alike,
      );
    });
});

test("the outcome is that of the gravest finding, unless an essential trait is missing", () => {
  fc.assert(
    fc.property(plans, (stocked) => {
      const { outcome, findings } = assessed(stocked);
      const added = outcomeOf(findings.map(({ weight }) => weight));
      if (outcome === "undetermined") expect(added).not.toBe("unsuitable");
      else expect(outcome).toBe(added);
    }),
  );
});

test("what a plan meets no longer counts: moving it back could only worsen the outcome", () => {
  fc.assert(
    fc.property(plans, (stocked) => {
      const { findings, met, outcome } = assessed(stocked);
      expect(met.every(({ weight }) => weight === "restricting")).toBe(true);
      if (outcome === "undetermined") return;
      const all = outcomeOf([...findings, ...met].map(({ weight }) => weight));
      expect(rank(all)).toBeGreaterThanOrEqual(rank(outcome));
    }),
  );
});

const middle = ({ min, max }: { readonly min?: number | undefined; readonly max?: number | undefined }) =>
  ((min ?? max ?? 0) + (max ?? min ?? 0)) / 2;

const warmth = ["coolest", "temperature", "hottest"] as const;

/** The water with one of its figures set, and those of warmth moved along: no cool season is warmer than the usual. */
function withWater(water: PlannedWater, name: string, set: number): PlannedWater {
  const at = (warmth as readonly string[]).indexOf(name);
  const moved = warmth.map((figure, index) => {
    const value = water[figure];
    if (at < 0 || value === undefined) return [figure, value];
    return [figure, index < at ? Math.min(value, set) : Math.max(value, set)];
  });
  return { ...water, ...Object.fromEntries(moved), [name]: set };
}

/** Every food, everywhere, at every hour, and so that each gets at it. */
const feast: readonly Offering[] = choices<string>(
  [classes.food, classes.zone, classes.light].map((words) => Object.keys(words)),
).map(([food, place, light]) => ({ food, place, light, apart: true }) as Offering);

const knowsHowToFeed = ({ diet }: SpeciesProfile) => Boolean(diet?.foods && diet.reach && diet.light);

/** The plan with a condition met, as a keeper would meet it; undefined where that takes another species. */
function meeting(plan: Plan, condition: Condition): Plan | undefined {
  const { on, of = 0 } = condition;
  const { tank, water, groups } = plan;
  const group = groups[of];
  if (!group) return undefined;
  const withTank = (changes: Partial<PlannedTank>): Plan => ({ ...plan, tank: { ...tank, ...changes } });
  const withGroup = (kept: Kept): Plan => ({
    ...plan,
    groups: replaced(groups, of, { species: group.species, form: group.form, ...kept }),
  });
  const withProfile = (species: SpeciesProfile): Plan => ({
    ...plan,
    groups: replaced(groups, of, { ...group, species }),
  });
  const { wanted } = condition;
  const within: PartialRange = "oneOf" in wanted ? {} : wanted;
  const [section, name] = on.split(".");
  if (section === "water") return { ...plan, water: withWater(water ?? {}, name ?? "", middle(within)) };
  switch (on) {
    case "tank.longestRun":
    case "tank.footprint":
      return withTank({ base: { shape: "rectangle", length: 1000, width: 1000 } });
    case "tank.lid":
      return withTank({ lid: true });
    case "tank.plants":
      return withTank({ plants: "oneOf" in wanted && wanted.oneOf.includes("none") ? "none" : "grown-in" });
    case "tank.cover":
      return withTank({ cover: within.min, openWater: undefined });
    case "tank.openWater":
      return withTank({ openWater: within.min, cover: undefined });
    case "tank.openSurface":
      return withTank({ openSurface: within.min });
    case "tank.sightBreaks":
      return withTank({ sightBreaks: within.min });
    case "tank.height":
      return withTank({ height: 400 });
    case "tank.filter.ripeArea":
      return withTank({ filter: { mediaArea: 10_000, age: 100 } });
    case "tank.flow.calmest":
    case "tank.flow.strongest":
      return withTank({ flow: { calmest: "still", strongest: "strong" } });
    case "group.count":
      return withGroup({ unsexed: Math.ceil(within.min ?? within.max ?? 1) });
    case "group.males":
      return within.max === 0 ? withGroup({ females: 2 }) : withGroup({ males: 1, females: 2 });
    case "group.females":
      return within.max === 0 ? withGroup({ males: 2 }) : withGroup({ females: 1, males: 2 });
    case "group.pairs":
      return withGroup({ females: 2 });
    case "group.femalesPerMale":
      return withGroup({ males: 1, females: Math.ceil(within.min ?? 0) });
    case "group.length":
      return withGroup({ ...group, length: within.min ?? within.max });
    case "group.grown":
      return withGroup({ juveniles: 2 });
    case "group.offerings":
      return knowsHowToFeed(group.species) ? { ...plan, offerings: feast } : undefined;
    case "group.longFins":
      return withProfile(shortFinned(group.species));
    case "group.company":
      return sparesFish(group.species)
        ? { ...plan, groups: [...groups, { species: calm, unsexed: 9 }] }
        : undefined;
    case "group.sex":
    case "tank.hides":
    case "tank.substrate":
      return alsoMeeting(plan, { ...condition, findings: [] });
  }
  return undefined;
}

const shortFinned = (species: SpeciesProfile): SpeciesProfile => ({
  ...species,
  appearance: { ...species.appearance, longFins: { value: false, basis: "published" } },
});

/** Nobody is company for a fish that would eat it. */
const sparesFish = ({ predation }: SpeciesProfile) =>
  predation?.eats?.value.every(({ prey }) => prey !== "fish") ?? false;

/** A calm fish of the open water that eats nobody, not even as grown as others are. */
const calm = animal("calm", {
  "social.settles": true,
  "social.group": { least: 6 },
  "space.zones": ["midwater"],
  "predation.eats": [],
});

const same = (a: Finding, b: Finding) =>
  a.rule === b.rule &&
  a.from === b.from &&
  a.to === b.to &&
  a.weight === "restricting" &&
  b.weight === "restricting" &&
  a.condition.on === b.condition.on &&
  JSON.stringify(a.condition.wanted) === JSON.stringify(b.condition.wanted);

describe.each(
  rules.filter(({ mayYield }) => mayYield.includes("restricting")).map((rule) => [rule.id, rule] as const),
)("%s alone", (_, rule) => {
  const ofTwoSpecies = plansOf([]).map((stocked) => ({
    ...stocked,
    groups: stocked.groups.filter(
      ({ of }, index) => stocked.groups.findIndex((other) => other.of === of) === index,
    ),
  }));

  test("loses a finding in a plan that meets its condition", () => {
    let met = 0;
    const holds = fc.property(ofTwoSpecies, (stocked) => {
      const plan = planned(stocked, stocked.species.map(profileOf));
      for (const finding of assessPlan(plan, { rules: [rule] }).findings) {
        if (finding.weight !== "restricting") continue;
        const better = meeting(plan, finding.condition);
        if (!better) continue;
        met += 1;
        const left = assessPlan(better, { rules: [rule] }).findings.filter((other) => same(other, finding));
        expect(left, JSON.stringify(finding.condition)).toEqual([]);
      }
    });
    // Some findings are rare in plans drawn at random: more are drawn until one arises.
    for (let round = 0; round === 0 || (met === 0 && round < 80); round += 1)
      fc.assert(holds, { numRuns: runs(50), seed: seedOf(round) });
    expect(met).toBeGreaterThan(0);
  });
});

describe("the species of the catalog", () => {
  test("never get a narrower verdict when a fact is taken away", () => {
    const withoutFact = (profile: SpeciesProfile, section: string, name: string): SpeciesProfile => ({
      ...profile,
      [section]: Object.fromEntries(
        Object.entries(Reflect.get(profile, section)).filter(([trait]) => trait !== name),
      ),
    });
    const sections = [
      "size",
      "water",
      "space",
      "temperament",
      "social",
      "appearance",
      "effects",
      "diet",
      "predation",
      "reproduction",
    ];
    fc.assert(
      fc.property(
        fc.constantFrom(...rules),
        anySpecies,
        anySpecies,
        animals,
        animals,
        tanks,
        waters,
        (rule, a, b, asA, asB, tank, water) => {
          const boundsOf = (from: SpeciesProfile) =>
            assessPlan(
              {
                tank,
                water,
                groups: [
                  { species: from, ...asA },
                  { species: b, ...asB },
                ],
              },
              { rules: [rule] },
            ).bounds;
          const bounds = boundsOf(a);
          for (const section of sections) {
            for (const name of Object.keys(Reflect.get(a, section))) {
              expect(lieWithin(bounds, boundsOf(withoutFact(a, section, name))), `${section}.${name}`).toBe(
                true,
              );
            }
          }
        },
      ),
      { numRuns: runs(30) },
    );
  });
});
