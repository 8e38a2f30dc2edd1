import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  assessPair,
  assessPlan,
  defineRule,
  type Judged,
  type PairRule,
  type PlanRule,
  type Rule,
  type SeenParty,
  type Weight,
} from "../../../src/compatibility";
import { InvalidInputError, refusal } from "../../../src/errors";
import type { TraitPath } from "../../../src/species";
import { oxygenSaturation } from "../../../src/water";
import { animal, type Stated } from "../animals";
import { planOf } from "../judging";
import { lieWithin, outcomeOf, rank } from "../ranks";
import { choices, type Disputed, only, profileOf, without, worldsOf } from "../worlds";

/** What is asked where nobody knows whether an animal lives alone, and a rule that may rule out needs it. */
const livingUnknown = {
  rule: "x-living",
  of: 0,
  trait: "social.living",
  reason: "missing",
  couldBe: "blocking",
  decides: true,
} as const;

/** The traits of random species: one of them essential, one that a rule may do without. */
const paths = ["space.cover", "water.oxygenNeed", "social.living", "temperament.shy"] as const;

const traits = fc.record(
  {
    "space.cover": fc.constantFrom(0, 0.5, 1),
    "water.oxygenNeed": fc.constantFrom("low" as const, "high" as const),
    "social.living": fc.constantFrom("alone" as const, "pair" as const, "shoal" as const),
    "temperament.shy": fc.boolean(),
  },
  { requiredKeys: [] },
) satisfies fc.Arbitrary<Stated>;

/** Up to two traits are disputed, each between up to three values. */
const species = (id: string): fc.Arbitrary<Disputed> =>
  fc
    .tuple(traits, traits, traits, fc.subarray([...paths], { maxLength: 2 }))
    .map(([stated, one, other, disputed]) => ({
      id,
      stated,
      also: [one, other].map((source) =>
        only(
          source,
          disputed.filter((path) => path in stated),
        ),
      ),
    }));

const complete = (id: string) =>
  species(id).filter(({ stated }) => Object.keys(stated).length === paths.length);

const weights = ["blocking", "restricting", "advisory", "favourable"] as const satisfies readonly Weight[];

const answer = fc.constantFrom<Judged>(
  { weight: "blocking" },
  { weight: "restricting", condition: { on: "tank.lid", wanted: { oneOf: [true] } } },
  { weight: "restricting", condition: { on: "group.count", of: "from", wanted: { min: 3 } } },
  { weight: "advisory" },
  { weight: "favourable" },
);

const needed = fc.subarray<TraitPath>(["space.cover", "water.oxygenNeed", "social.living"], { minLength: 1 });

/**
 * How a random rule answers: it reads what it needs one after the other, may stop at any, and answers by what it has
 * read. That one of the two is not shy takes the grave answers back, so that not knowing judges as severely as any value.
 */
const decisions = fc.record({
  stops: fc.func(fc.boolean()),
  answers: fc.func(fc.array(answer, { maxLength: 2 })),
});

type View = SeenParty<never, TraitPath>;
interface Sides {
  readonly from: View;
  readonly to: View;
}

function decide(
  { stops, answers }: { stops: (read: unknown[]) => boolean; answers: (read: unknown[]) => Judged[] },
  sides: readonly (readonly [View, readonly TraitPath[]])[],
): readonly Judged[] {
  const read: unknown[] = [];
  for (const [side, needs] of sides) {
    for (const path of needs) {
      read.push(side[path]);
      if (stops(read)) break;
    }
  }
  const found = answers(read);
  const bold = sides.some(([side]) => side["temperament.shy"] === false);
  return bold ? found.filter(({ weight }) => weight === "advisory" || weight === "favourable") : found;
}

const uses = ["temperament.shy"] as const;

/** A rule of which only a run knows what it declares. */
function defined<Made extends Rule>(rule: Made): Made {
  const define: (rule: Rule) => Rule = defineRule;
  define(rule);
  return rule;
}

const pairRule = (id: string, way: PairRule["way"]): fc.Arbitrary<PairRule> =>
  fc.tuple(needed, needed, decisions).map(([from, to, decision]) =>
    defined({
      id,
      way,
      needs: { from, to },
      uses: { from: uses, to: uses },
      mayYield: weights,
      judge: (seen: Sides) =>
        decide(decision, [
          [seen.from, from],
          [seen.to, to],
        ]),
    }),
  );

const groupRule = (id: string): fc.Arbitrary<PlanRule> =>
  fc.tuple(needed, decisions).map(([from, decision]) =>
    defined({
      id,
      way: "each-group",
      needs: { from },
      uses: { from: uses },
      mayYield: weights,
      judge: (seen: Pick<Sides, "from">) => decide(decision, [[seen.from, from]]),
    }),
  );

const pairRuleSets = fc.tuple(pairRule("x-mutual", "mutual"), pairRule("x-each-way", "each-way"));
const ruleSets = fc.tuple(
  pairRule("x-mutual", "mutual"),
  pairRule("x-each-way", "each-way"),
  groupRule("x-group"),
);

const tank = fc.record({ lid: fc.boolean() }, { requiredKeys: [] });
const counts = fc.constantFrom(1, 2, 5);

const inPair = (a: Disputed, b: Disputed, rules: readonly Rule[]) =>
  assessPair({ species: profileOf(a) }, { species: profileOf(b) }, { rules });

describe("the bounds of random rules", () => {
  test("hold every scenario of a pair, and its own answer", () => {
    fc.assert(
      fc.property(species("a"), species("b"), pairRuleSets, (a, b, rules) => {
        const { bounds, outcome } = inPair(a, b, rules);
        for (const [from, to] of choices([worldsOf(a), worldsOf(b)])) {
          if (!from || !to) throw new Error("two species");
          const world = assessPair({ species: from }, { species: to }, { rules });
          expect(lieWithin(world.bounds, bounds)).toBe(true);
        }
        if (outcome !== "undetermined") {
          expect(lieWithin({ atBest: outcome, atWorst: outcome }, bounds)).toBe(true);
        }
      }),
    );
  });

  test("are no wider than the scenarios of one rule that lacks nothing", () => {
    fc.assert(
      fc.property(complete("a"), complete("b"), pairRule("x-one", "mutual"), (a, b, rule) => {
        const { bounds } = inPair(a, b, [rule]);
        const outcomes = choices([worldsOf(a), worldsOf(b)]).map(([from, to]) => {
          if (!from || !to) throw new Error("two species");
          return rank(assessPair({ species: from }, { species: to }, { rules: [rule] }).outcome);
        });
        expect([rank(bounds.atBest), rank(bounds.atWorst)]).toEqual([
          Math.min(...outcomes),
          Math.max(...outcomes),
        ]);
      }),
    );
  });

  test("hold every scenario of a plan", () => {
    fc.assert(
      fc.property(species("a"), species("b"), counts, counts, tank, ruleSets, (a, b, m, n, inTank, rules) => {
        const assess = (profiles: readonly ReturnType<typeof profileOf>[]) =>
          assessPlan(
            planOf(
              profiles.map((profile, index) => ({ species: profile, unsexed: index === 0 ? m : n })),
              { tank: inTank },
            ),
            { rules },
          );
        const { bounds } = assess([profileOf(a), profileOf(b)]);
        for (const world of choices([worldsOf(a), worldsOf(b)])) {
          expect(lieWithin(assess(world).bounds, bounds)).toBe(true);
        }
      }),
    );
  });

  test("never narrow when a fact is taken away", () => {
    fc.assert(
      fc.property(species("a"), species("b"), pairRuleSets, (a, b, rules) => {
        const { bounds } = inPair(a, b, rules);
        for (const path of paths) {
          expect(lieWithin(bounds, inPair(without(a, path), b, rules).bounds), `a, ${path}`).toBe(true);
          expect(lieWithin(bounds, inPair(a, without(b, path), rules).bounds), `b, ${path}`).toBe(true);
        }
      }),
    );
  });

  test("never narrow a plan when a fact is taken away", () => {
    fc.assert(
      fc.property(species("a"), counts, tank, ruleSets, (a, count, inTank, rules) => {
        const boundsOf = (known: Disputed) =>
          assessPlan(planOf([{ species: profileOf(known), unsexed: count }], { tank: inTank }), { rules })
            .bounds;
        for (const path of paths) {
          expect(lieWithin(boundsOf(a), boundsOf(without(a, path))), path).toBe(true);
        }
      }),
    );
  });
});

test("the outcome is that of the adopted values alone", () => {
  fc.assert(
    fc.property(species("a"), species("b"), pairRuleSets, (a, b, rules) => {
      const adopted = inPair({ ...a, also: [] }, { ...b, also: [] }, rules);
      const disputed = inPair(a, b, rules);
      expect(disputed.outcome).toBe(adopted.outcome);
      expect(disputed.findings.map(({ weight }) => weight)).toEqual(
        adopted.findings.map(({ weight }) => weight),
      );
    }),
  );
});

test("one more rule never improves the outcome", () => {
  fc.assert(
    fc.property(species("a"), species("b"), pairRuleSets, (a, b, [rule, further]) => {
      const [before, after] = [inPair(a, b, [rule]), inPair(a, b, [rule, further])];
      if (before.outcome !== "undetermined" && after.outcome !== "undetermined") {
        expect(rank(after.outcome)).toBeGreaterThanOrEqual(rank(before.outcome));
      }
      expect(rank(after.bounds.atBest)).toBeGreaterThanOrEqual(rank(before.bounds.atBest));
      expect(rank(after.bounds.atWorst)).toBeGreaterThanOrEqual(rank(before.bounds.atWorst));
    }),
  );
});

test("the outcome is that of the gravest finding, unless a trait is missing that is essential or needed to rule out", () => {
  fc.assert(
    fc.property(species("a"), species("b"), pairRuleSets, (a, b, rules) => {
      const { outcome, findings } = inPair(a, b, rules);
      const { open } = inPair({ ...a, also: [] }, { ...b, also: [] }, rules);
      const added = outcomeOf(findings.map(({ weight }) => weight));
      const isNeeded = (id: string, trait: TraitPath) =>
        rules.some(({ needs, ...rule }) => rule.id === id && [needs?.from, needs?.to].flat().includes(trait));
      const decisive = open.some(
        (question) =>
          question.reason === "missing" &&
          (question.trait === "social.living" ||
            (question.couldBe === "blocking" && isNeeded(question.rule, question.trait))),
      );
      expect(outcome).toBe(decisive && added !== "unsuitable" ? "undetermined" : added);
      expect(open.some((question) => "decides" in question)).toBe(decisive);
    }),
  );
});

describe("what is not known", () => {
  const blocks = (id: `x-${string}`, needs: readonly TraitPath[], more: Partial<PairRule> = {}): PairRule =>
    defined({
      id,
      way: "mutual",
      needs: { from: needs, to: [] },
      mayYield: ["blocking"],
      judge: ({ from }: Sides) => (needs.every((trait) => from[trait]) ? [] : []),
      ...more,
    });
  const nobody = { species: animal("nobody") };

  test("of an essential trait leaves the verdict undetermined, between the best and the worst", () => {
    const verdict = assessPair(nobody, nobody, { rules: [blocks("x-living", ["social.living"])] });
    expect(verdict.outcome).toBe("undetermined");
    expect(verdict.bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
    expect(verdict.open).toEqual([livingUnknown]);
  });

  test("of another trait does so where a rule needs it that may rule out: it was not even judged", () => {
    const verdict = assessPair(nobody, nobody, { rules: [blocks("x-cover", ["space.cover"])] });
    expect(verdict.outcome).toBe("undetermined");
    expect(verdict.bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
    expect(verdict.open).toMatchObject([{ trait: "space.cover", reason: "missing", decides: true }]);
  });

  test("of another trait leaves it open where a rule needs it that may restrict", () => {
    const rule = blocks("x-cover", ["space.cover"], { mayYield: ["restricting"] });
    const verdict = assessPair(nobody, nobody, { rules: [rule] });
    expect(verdict.outcome).toBe("suitable");
    expect(verdict.bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
    expect(verdict.open).toMatchObject([{ trait: "space.cover", reason: "missing" }]);
    expect(verdict.open).not.toMatchObject([{ decides: true }]);
  });

  test("does not matter where the rule gets by without reading it", () => {
    const rule = blocks("x-cover", ["space.cover"], { judge: () => [] });
    const verdict = assessPair(nobody, nobody, { rules: [rule] });
    expect(verdict.bounds).toEqual({ atBest: "suitable", atWorst: "suitable" });
    expect(verdict.open).toEqual([]);
  });

  test("does not matter where a rule could only advise", () => {
    const rule = blocks("x-advises", ["social.living"], { mayYield: ["advisory"] });
    const verdict = assessPair(nobody, nobody, { rules: [rule] });
    expect(verdict.outcome).toBe("suitable");
    expect(verdict.bounds.atWorst).toBe("suitable");
  });

  test("does not soften what blocks anyway", () => {
    const certain = defineRule({
      id: "x-certain",
      way: "mutual",
      needs: { from: [], to: [] },
      mayYield: ["blocking"],
      judge: () => [{ weight: "blocking" }],
    });
    const rules = [blocks("x-living", ["social.living"]), certain];
    expect(assessPair(nobody, nobody, { rules }).outcome).toBe("unsuitable");
  });

  test("comes with its reason, the most decisive first", () => {
    const restricts = defineRule({
      id: "x-lid",
      way: "once",
      mayYield: ["restricting"],
      judge: () => [{ weight: "restricting", condition: { on: "tank.lid", wanted: { oneOf: [true] } } }],
    });
    const gasps = defineRule({
      id: "x-oxygen",
      way: "each-group",
      needs: { from: ["water.oxygenNeed"] },
      reads: ["water.temperature"],
      mayYield: ["blocking"],
      judge: ({ from, plan }) =>
        from["water.oxygenNeed"] === "high" &&
        oxygenSaturation({ temperature: plan["water.temperature"] ?? 0 }) < 7
          ? [{ weight: "blocking" }]
          : [],
    });
    const disputed = defineRule({
      id: "x-cover",
      way: "each-group",
      needs: { from: ["space.cover"] },
      mayYield: ["restricting"],
      judge: ({ from }) => [
        { weight: "restricting", condition: { on: "tank.cover", wanted: { min: from["space.cover"] } } },
      ],
    });
    const missing = blocks("x-living", ["social.living"]);
    const lacking = defined<PlanRule>({
      ...missing,
      way: "each-group",
      needs: { from: ["social.living"] },
      judge: () => [],
    });
    const fish = animal(
      "fish",
      { "water.oxygenNeed": "high", "space.cover": 0.2 },
      { also: [{ "space.cover": 0.6 }] },
    );
    const plan = planOf([{ species: fish, unsexed: 1 }], {
      tank: { cover: 0.4 },
      water: { temperature: 45 },
    });
    const { open } = assessPlan(plan, { rules: [restricts, disputed, gasps, lacking] });
    expect(open).toEqual([
      livingUnknown,
      { rule: "x-oxygen", of: 0, reason: "outside-domain", couldBe: "blocking" },
      { rule: "x-lid", on: "tank.lid", reason: "not-given", couldBe: "restricting" },
      {
        rule: "x-cover",
        of: 0,
        trait: "space.cover",
        reason: "disputed",
        values: [0.2, 0.6],
        couldBe: "restricting",
      },
    ]);
  });

  test("past where an equation holds is open, not an answer", () => {
    const rule = defineRule({
      id: "x-oxygen",
      way: "once",
      reads: ["water.temperature"],
      mayYield: ["blocking"],
      judge: ({ plan }) =>
        oxygenSaturation({ temperature: plan["water.temperature"] ?? 0 }) < 5 ? [{ weight: "blocking" }] : [],
    });
    const at = (temperature: number) =>
      assessPlan(planOf([{ species: animal("fish"), unsexed: 1 }], { water: { temperature } }), {
        rules: [rule],
      });
    expect(at(40).open).toEqual([]);
    const { outcome, bounds, open } = at(45);
    expect(outcome).toBe("suitable");
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
    expect(open).toEqual([{ rule: "x-oxygen", reason: "outside-domain", couldBe: "blocking" }]);
  });

  test("past where an equation holds for one disputed value leaves what the adopted one found", () => {
    const rule = defineRule({
      id: "x-oxygen",
      way: "mutual",
      needs: { from: ["space.height"], to: [] },
      mayYield: ["blocking"],
      judge: ({ from }) =>
        oxygenSaturation({ temperature: from["space.height"] }) < 7 ? [{ weight: "blocking" }] : [],
    });
    const sure = animal("sure", { "space.height": 40 });
    const disputed = animal("disputed", { "space.height": 40 }, { also: [{ "space.height": 45 }] });
    const outcome = (profile: typeof sure) =>
      assessPair({ species: profile }, nobody, { rules: [rule] }).outcome;
    expect(outcome(sure)).toBe("unsuitable");
    expect(outcome(disputed)).toBe("unsuitable");
  });

  test("any other error of a rule is the app's to see", () => {
    const broken = defineRule({
      id: "x-broken",
      way: "mutual",
      needs: { from: [], to: [] },
      mayYield: ["advisory"],
      judge: () => {
        throw refusal("x", "y", "z");
      },
    });
    expect(() => assessPair(nobody, nobody, { rules: [broken] })).toThrow(InvalidInputError);
  });
});

describe("a finding", () => {
  const shy = animal("shy", { "temperament.shy": true, "space.cover": 0.5, "social.living": "shoal" });
  const rule = defineRule({
    id: "x-reads",
    way: "each-way",
    needs: { from: ["space.cover"], to: [] },
    uses: { from: ["temperament.shy"], to: ["social.living"] },
    mayYield: ["advisory"],
    judge: ({ from }) => (from["space.cover"] > 0 && from["temperament.shy"] ? [{ weight: "advisory" }] : []),
  });

  test("names the rule, whom it concerns, and the traits that decided it", () => {
    const { findings } = assessPair({ species: shy }, { species: shy }, { rules: [rule] });
    expect(findings).toEqual([
      {
        rule: "x-reads",
        weight: "advisory",
        from: 0,
        to: 1,
        basis: "published",
        traits: ["space.cover", "temperament.shy"],
      },
      {
        rule: "x-reads",
        weight: "advisory",
        from: 1,
        to: 0,
        basis: "published",
        traits: ["space.cover", "temperament.shy"],
      },
    ]);
  });

  test("rests on its weakest fact", () => {
    const bases = ["published", "curated", "memory", "common-practice"] as const;
    for (const [index, strong] of bases.entries()) {
      for (const weak of bases.slice(index)) {
        const rests = {
          ...shy,
          space: { cover: { value: 0.5, basis: strong } },
          temperament: { shy: { value: true, basis: weak } },
        };
        const { findings } = assessPair({ species: rests }, { species: shy }, { rules: [rule] });
        expect(findings[0]?.basis, `${strong}, ${weak}`).toBe(weak);
      }
    }
  });
});

test("a rule sees only the traits it declares", () => {
  const seen: unknown[] = [];
  const curious = defined<PairRule>({
    id: "x-curious",
    way: "mutual",
    needs: { from: ["space.cover"], to: [] },
    mayYield: ["advisory"],
    judge: ({ from, to }: Sides) => {
      seen.push(from["space.cover"], from["temperament.shy"], to["space.cover"]);
      return [];
    },
  });
  const species = animal("fish", { "space.cover": 0.5, "temperament.shy": true });
  assessPair({ species }, { species }, { rules: [curious] });
  expect(seen).toEqual([0.5, undefined, undefined]);
});
