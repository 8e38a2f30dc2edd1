import fc from "fast-check";
import { describe, expect, test } from "vitest";
import ancistrusCirrhosus from "vivary/catalog/ancistrus-cirrhosus";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import bettaSplendens from "vivary/catalog/betta-splendens";
import brachygobiusDoriae from "vivary/catalog/brachygobius-doriae";
import neocaridinaDavidi from "vivary/catalog/neocaridina-davidi";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import {
  assessPair,
  assessPlan,
  pairRules,
  planRules,
  type Rule,
  type RuleId,
} from "../../../src/compatibility";
import type { Group, Plan } from "../../../src/plan";
import { anySpecies } from "../../drawn";
import { runs } from "../../runs";
import { adults, animal } from "../animals";
import { animals, fish, tanks, waters } from "../arbitrary";
import { deepFrozen } from "../deep-frozen";
import { findingsOf, inputsAsked, planOf } from "../judging";
import { renumbered } from "../mapped";
import { numbersIn } from "../numbers-in";
import { rank } from "../ranks";
import { profileOf } from "../worlds";

const species = fc.oneof(anySpecies, fish("a").map(profileOf));
const group = fc.tuple(species, animals).map(([kind, kept]) => ({ species: kind, ...kept }));
const plans: fc.Arbitrary<Plan> = fc.record({
  tank: tanks,
  water: waters,
  groups: fc.array(group, { minLength: 1, maxLength: 4 }).map((groups) => groups.map(inOwnName)),
});

/** Invented species bear different names, as they are different species. */
function inOwnName<Each extends Group>(group: Each, index: number): Each {
  const { species } = group;
  return species.id === "a" ? { ...group, species: { ...species, id: `a${index}` } } : group;
}

describe("any plan", () => {
  test("gets the same verdict in whatever order its groups stand", () => {
    const shuffled = plans.chain((plan) =>
      fc
        .shuffledSubarray([...plan.groups.keys()], { minLength: plan.groups.length })
        .map((order) => ({ plan, order })),
    );
    fc.assert(
      fc.property(shuffled, ({ plan, order }) => {
        const groups = order.flatMap((index) => plan.groups[index] ?? []);
        const verdict = assessPlan({ ...plan, groups });
        expect(renumbered(verdict, order)).toEqual(renumbered(assessPlan(plan), [...order.keys()]));
      }),
      { numRuns: runs(60) },
    );
  });

  test("gets a verdict that survives JSON unchanged and holds finite numbers only", () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const verdict = assessPlan(plan);
        expect(JSON.parse(JSON.stringify(verdict))).toStrictEqual(verdict);
        expect(numbersIn(verdict).every(Number.isFinite)).toBe(true);
      }),
      { numRuns: runs(60) },
    );
  });

  test("is not changed by being judged", () => {
    fc.assert(
      fc.property(plans, (plan) => {
        expect(assessPlan(deepFrozen(plan))).toEqual(assessPlan(plan));
      }),
    );
  });

  test("is no better off among themselves with one more species", () => {
    const newcomer = fc.tuple(fish("b").map(profileOf), animals);
    fc.assert(
      fc.property(plans, newcomer, (plan, [stranger, kept]) => {
        const more = { species: stranger, ...kept };
        const alone = assessPlan(plan, { rules: pairRules });
        const together = assessPlan({ ...plan, groups: [...plan.groups, more] }, { rules: pairRules });
        expect(together.findings).toEqual(expect.arrayContaining([...alone.findings]));
        expect(rank(together.bounds.atBest)).toBeGreaterThanOrEqual(rank(alone.bounds.atBest));
        expect(rank(together.bounds.atWorst)).toBeGreaterThanOrEqual(rank(alone.bounds.atWorst));
      }),
    );
  });

  test("is no better off where a group is listed in two parts", () => {
    const halves = (group: Group): readonly Group[] => {
      const { males = 0, females = 0, unsexed = 0, juveniles = 0 } = group;
      const part = (half: (count: number) => number) => ({
        ...group,
        males: half(males / 2),
        females: half(females / 2),
        unsexed: half(unsexed / 2),
        juveniles: half(juveniles / 2),
      });
      return [part(Math.ceil), part(Math.floor)].filter(
        (each) => each.males + each.females + each.unsexed + each.juveniles > 0,
      );
    };
    fc.assert(
      fc.property(plans, fc.constantFrom<Rule>(...planRules, ...pairRules), (plan, rule) => {
        const alone = { rules: [rule] };
        const whole = assessPlan(plan, alone);
        const split = assessPlan({ ...plan, groups: plan.groups.flatMap(halves) }, alone);
        expect(rank(split.bounds.atWorst)).toBeGreaterThanOrEqual(rank(whole.bounds.atWorst));
        if (whole.outcome !== "undetermined" && split.outcome !== "undetermined") {
          expect(rank(split.outcome)).toBeGreaterThanOrEqual(rank(whole.outcome));
        }
      }),
      { numRuns: runs(80) },
    );
  });

  test("that says less is never better off: what it does not say is not met", () => {
    const optional = ["lid", "cover", "plants", "flow"] as const;
    fc.assert(
      fc.property(plans, fc.constantFrom(...optional), (plan, name) => {
        const { [name]: _, ...tank } = plan.tank;
        const [said, unsaid] = [assessPlan(plan).bounds, assessPlan({ ...plan, tank }).bounds];
        expect(rank(unsaid.atBest)).toBeGreaterThanOrEqual(rank(said.atBest));
        expect(rank(unsaid.atWorst)).toBeGreaterThanOrEqual(rank(said.atWorst));
      }),
      { numRuns: runs(80) },
    );
  });
});

describe("who is judged with whom", () => {
  const named = (id: string, count: number): Group => ({
    species: animal(id, {
      "temperament.acts": [{ does: "chases", target: "any" }],
      "social.living": "group",
      "size.adultLength": adults(5),
      "water.pH": { kept: { min: 6, max: 8 } },
    }),
    unsexed: count,
  });
  const between = (groups: readonly Group[], rule: RuleId) =>
    findingsOf(assessPlan(planOf(groups)), rule).map(({ from, to }) => [from, to]);

  test("each two groups once by rules that look both ways, twice by those that do not", () => {
    const groups = [named("a", 1), named("b", 1), named("c", 1)];
    expect(between(groups, "ph")).toEqual([
      [0, 1],
      [0, 2],
      [1, 2],
    ]);
    expect(between(groups, "acts-others")).toHaveLength(6);
  });

  test("a group of two or more also with itself, a single animal not", () => {
    expect(between([named("a", 2)], "acts-own-kind")).toEqual([[0, 0]]);
    expect(between([named("a", 1)], "acts-own-kind")).toEqual([]);
    expect(between([named("a", 2)], "ph")).toEqual([]);
  });
});

describe("what a plan does not say", () => {
  test("is open with the reason not-given, and blocks nothing", () => {
    const plan = planOf([{ species: tanichthysAlbonubes, unsexed: 10 }], { water: { temperature: 20 } });
    const verdict = assessPlan(plan);
    const { outcome, findings } = verdict;
    expect(outcome).toBe("conditional");
    expect(inputsAsked(verdict)).toContain("tank.cover");
    expect(findings.some(({ weight }) => weight === "blocking")).toBe(false);
  });

  test("is asked once for each rule and party", () => {
    const groups = [
      { species: animal("a"), unsexed: 2 },
      { species: animal("b"), unsexed: 2 },
      { species: animal("c"), unsexed: 2 },
    ];
    const questions = assessPlan(planOf(groups)).open.map((question) => JSON.stringify(question));
    expect(new Set(questions).size).toBe(questions.length);
  });
});

test("a verdict of a plan says what it was made with, and names its groups", () => {
  const plan = planOf([
    { species: ancistrusCirrhosus, males: 1, females: 2 },
    { species: paracheirodonInnesi, unsexed: 8, juveniles: 2 },
    { species: poeciliaReticulata, form: "short-finned", juveniles: 3 },
  ]);
  const { made, parties } = assessPlan(plan);
  expect(made.rules).toEqual([...planRules, ...pairRules].map(({ id }) => id));
  expect(parties).toMatchObject([
    { id: "ancistrus-cirrhosus", count: 3, males: 1, females: 2 },
    { id: "paracheirodon-innesi", count: 10 },
    { id: "poecilia-reticulata", form: "short-finned", count: 3, stage: "juvenile" },
  ]);
  expect(parties[1]).not.toHaveProperty("males");
});

describe("tanks every keeper knows", () => {
  test("white clouds in a cool planted tank: yes", () => {
    const plan = planOf([{ species: tanichthysAlbonubes, unsexed: 12 }], {
      tank: {
        base: { shape: "rectangle", length: 80, width: 35 },
        height: 40,
        lid: true,
        cover: 0.4,
        plants: "planted",
        flow: { calmest: "still", strongest: "gentle" },
        filter: { mediaArea: 1.5, age: 90 },
      },
      water: { temperature: 20, generalHardness: 8 },
    });
    expect(assessPlan(plan).outcome).toBe("suitable");
  });

  test("an oscar in a nano: no", () => {
    const plan = planOf([{ species: astronotusOcellatus, unsexed: 1 }], {
      tank: { base: { shape: "rectangle", length: 40, width: 25 }, height: 25 },
      water: { temperature: 26 },
    });
    expect(assessPlan(plan).outcome).toBe("unsuitable");
  });

  test("two male bettas with a divider in the keeper's head only: no", () => {
    const plan = planOf([{ species: bettaSplendens, males: 2 }], { water: { temperature: 26 } });
    expect(assessPlan(plan).outcome).toBe("unsuitable");
  });

  test("bumblebee gobies beside neons: no water for both", () => {
    const plan = planOf([
      { species: brachygobiusDoriae, unsexed: 8 },
      { species: paracheirodonInnesi, unsexed: 10 },
    ]);
    expect(assessPlan(plan).outcome).toBe("unsuitable");
  });

  test("tiger barbs with guppies: torn fins, unless the guppies are of a short-finned form", () => {
    const plan = planOf([
      { species: puntigrusTetrazona, unsexed: 12 },
      { species: poeciliaReticulata, males: 2, females: 4 },
    ]);
    expect(findingsOf(assessPlan(plan), "fin-nipping")).toMatchObject([
      {
        from: 0,
        to: 1,
        weight: "blocking",
        instead: { on: "group.longFins", of: 1, wanted: { oneOf: [false] } },
        watchFor: "torn-fins",
      },
    ]);
  });

  test("cherry shrimps with neons: young are lost, and need moss where they are wanted", () => {
    const groups = (raises: boolean) => [
      { species: neocaridinaDavidi, unsexed: 20, raises },
      { species: paracheirodonInnesi, unsexed: 10 },
    ];
    const eaten = (raises: boolean, cover: number) =>
      findingsOf(assessPlan(planOf(groups(raises), { tank: { cover } })), "predation");
    expect(eaten(false, 0.1)).toMatchObject([{ from: 1, to: 0, weight: "advisory" }]);
    expect(eaten(true, 0.1)).toMatchObject([
      { from: 1, to: 0, weight: "restricting", condition: { on: "tank.cover" } },
    ]);
    expect(eaten(true, 0.5)).toEqual([]);
  });

  test("what holds for a pair holds in every tank: nothing that blocks a pair is missing in the plan", () => {
    fc.assert(
      fc.property(anySpecies, anySpecies, (a, b) => {
        fc.pre(a.id !== b.id);
        const pair = assessPair({ species: a, count: 6 }, { species: b, count: 6 });
        const plan = assessPlan(
          planOf([
            { species: a, unsexed: 6 },
            { species: b, unsexed: 6 },
          ]),
          { rules: pairRules },
        );
        const blocking = ({ findings }: typeof pair) =>
          findings.filter(({ weight, from, to }) => weight === "blocking" && from !== to);
        expect(blocking(plan)).toEqual(expect.arrayContaining(blocking(pair)));
      }),
    );
  });

  test("a cory is no company for shy fish, whatever else it is", () => {
    const groups = [{ species: osteogasterAenea, unsexed: 6 }];
    expect(assessPlan(planOf(groups)).findings.some(({ rule }) => rule === "settling-company")).toBe(false);
  });
});
