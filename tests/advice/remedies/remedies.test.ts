import { describe, expect, test } from "vitest";
import { allSpecies, speciesById } from "vivary/catalog";
import { type Remedy, remedies } from "../../../src/advice";
import { assessPlan, planner } from "../../../src/compatibility";
import { InvalidInputError } from "../../../src/errors";
import { facts, type Group, type Plan } from "../../../src/plan";
import { factAt, type SpeciesProfile, traitPaths } from "../../../src/species";
import { runs, seedOf } from "../../runs";
import { without } from "../../without";
import { keptTank } from "../kept-tank";
import { spoiledPlans } from "./spoiled";

function species(id: string): SpeciesProfile {
  const found = speciesById(id);
  if (!found) throw new Error(id);
  return found;
}

const food: Plan["offerings"] = [
  { food: "dry", place: "surface" },
  { food: "dry", place: "midwater" },
  { food: "dry", place: "bottom", light: "night", apart: true },
  { food: "algae", place: "bottom", light: "dusk", apart: true },
];

/** A tank in which nothing is amiss for most, with these animals. */
function kept(groups: readonly Group[], tank: Partial<Plan["tank"]> = {}, water: Plan["water"] = {}): Plan {
  return {
    tank: { ...keptTank, ...tank },
    water: { temperature: 25, pH: 6.8, generalHardness: 8, ...water },
    groups,
    offerings: food,
  };
}

const plans: Readonly<Record<string, Plan>> = {
  "angelfish and neons": kept([
    { species: species("pterophyllum-scalare"), unsexed: 2 },
    { species: species("paracheirodon-innesi"), unsexed: 12 },
  ]),
  "too few neons in too warm water": kept(
    [{ species: species("paracheirodon-innesi"), unsexed: 4 }],
    {},
    { temperature: 29 },
  ),
  "tiger barbs and angelfish": kept([
    { species: species("puntigrus-tetrazona"), unsexed: 4 },
    { species: species("pterophyllum-scalare"), unsexed: 2 },
  ]),
  "danios without a lid in a short tank": kept([{ species: species("danio-rerio"), unsexed: 8 }], {
    base: { shape: "rectangle", length: 50, width: 35 },
    lid: false,
  }),
  "nothing said but the base": {
    tank: { base: { shape: "rectangle", length: 100, width: 40 } },
    groups: [
      { species: species("danio-rerio"), unsexed: 3 },
      { species: species("pterophyllum-scalare"), unsexed: 1 },
    ],
  },
};

const told = ({ moves }: Remedy) => moves.map(({ kind, of }) => (of === undefined ? kind : `${kind} ${of}`));

/** The plan with what it did not say as the remedy provides it. */
function provided({ tank, water = {}, groups, offerings }: Plan, { plan, moves }: Remedy): Plan {
  const later = planner(plan).plan;
  const fed = offerings ?? (moves.some(({ kind }) => kind === "feeding") ? undefined : later.offerings);
  return {
    tank: { ...onlyBeside(later.tank, moves, "tank"), ...tank },
    water: { ...onlyBeside(later.water ?? {}, moves, "water"), ...water },
    groups,
    ...(fed && { offerings: fed }),
  };
}

/** The fields of a later part that no move changes. */
function onlyBeside<Part extends object>(part: Part, moves: Remedy["moves"], name: "tank" | "water"): Part {
  const moved = new Set(moves.flatMap(({ change }) => Object.keys(change[name] ?? {})));
  return Object.fromEntries(Object.entries(part).filter(([field]) => !moved.has(field))) as Part;
}

describe("each remedy", () => {
  const all = [...Object.values(plans), ...spoiledPlans(8, 21)].map((plan) => ({
    plan,
    found: remedies(plan),
  }));

  test("makes the plan suitable when it is judged afresh", () => {
    for (const { found } of all)
      for (const { plan, outcome, bounds } of found.remedies) {
        const verdict = assessPlan(plan);
        expect([outcome, bounds]).toEqual(["suitable", verdict.bounds]);
        expect(verdict.outcome).toBe("suitable");
      }
    expect(all.filter(({ found }) => found.remedies.length > 0).length).toBeGreaterThan(5);
  });

  test("is its moves one after another, beside what the plan did not say", () => {
    for (const { plan, found } of all)
      for (const remedy of found.remedies) {
        const start = planner(provided(plan, remedy));
        const done = remedy.moves.reduce((now, { change }) => now.with(change), start);
        expect(assessPlan(done.plan).outcome).toBe("suitable");
        expect(done.plan.groups).toEqual(remedy.plan.groups);
      }
  });

  test("does not help with any move left out", () => {
    for (const { plan, found } of all)
      for (const remedy of found.remedies)
        for (const left of remedy.moves) {
          const rest = remedy.moves.filter((move) => move !== left);
          const leavesNobody = plan.groups.length <= rest.filter(({ kind }) => kind === "rehome").length;
          if (leavesNobody) continue;
          const start = planner(provided(plan, remedy));
          expect(rest.reduce((now, { change }) => now.with(change), start).outcome).not.toBe("suitable");
        }
  });

  test("says what it meets in the unit of the fact", () => {
    const conditions = all.flatMap(({ found }) =>
      found.remedies.flatMap(({ moves, provided: besides }) => [
        ...moves.flatMap(({ meets }) => meets),
        ...besides,
      ]),
    );
    for (const { on, wanted } of conditions)
      if (!("oneOf" in wanted)) expect([on, wanted.unit]).toEqual([on, facts[on].unit]);
    expect(conditions.length).toBeGreaterThan(0);
  });

  test("is at most three moves, those with fewest animals moved first, and not all animals", () => {
    expect(all.filter(({ found }) => found.remedies.length > 1).length).toBeGreaterThan(0);
    for (const { plan, found } of all) {
      const moved = found.remedies.map(({ moves }) => moves.reduce((sum, move) => sum + move.moved, 0));
      expect(moved).toEqual([...moved].sort((one, other) => one - other));
      expect(found.remedies.every(({ moves }) => moves.length <= 3)).toBe(true);
      expect(found.remedies.every((remedy) => remedy.plan.groups.length > 0)).toBe(true);
      expect(plan.groups.length).toBeGreaterThan(0);
    }
  });

  test("is there, or what stands in the way is named", () => {
    for (const { found } of all) expect(found.remedies.length === 0).toBe(found.obstacle !== undefined);
  });
});

describe("a keeper is told", () => {
  const first = (plan: Plan, options = {}) => remedies(plan, options).remedies[0];

  test("to part those of whom one eats the other, the fewer animals first", () => {
    const { remedies: found } = remedies(plans["angelfish and neons"] as Plan);
    expect(found.map(told)).toEqual([["rehome 0"], ["rehome 1"]]);
    expect(found.map(({ moves }) => moves[0]?.moved)).toEqual([2, 12]);
  });

  test("to cool the water and to get more of the shoal", () => {
    const remedy = first(plans["too few neons in too warm water"] as Plan);
    expect(remedy && told(remedy)).toEqual(["water", "numbers 0"]);
    expect(remedy?.plan.water?.temperature).toBe(23);
    expect(remedy?.plan.groups[0]?.unsexed).toBe(8);
  });

  test("to top up every shoal that is short in one go, each to what it needs", () => {
    const ids = ["paracheirodon-innesi", "hyphessobrycon-amandae", "trigonostigma-heteromorpha"];
    const remedy = first(kept(ids.map((id) => ({ species: species(id), unsexed: 3 }))));
    expect(remedy && told(remedy)).toEqual(["numbers"]);
    expect(remedy?.moves[0]?.meets.map(({ on, of }) => [on, of])).toEqual([
      ["group.count", 0],
      ["group.count", 1],
      ["group.count", 2],
    ]);
    expect(remedy?.plan.groups.map(({ unsexed }) => unsexed)).toEqual([8, 8, 8]);
  });

  test("that one of two male fighting fish goes", () => {
    const remedy = first(kept([{ species: species("betta-splendens"), males: 2 }], {}, { temperature: 26 }));
    expect(remedy && told(remedy)).toEqual(["rehome 0"]);
    expect(remedy?.moves[0]?.moved).toBe(1);
    expect(remedy?.plan.groups[0]?.males).toBe(1);
  });

  test("no way by which a pair is parted of which young are wanted", () => {
    const base = { shape: "rectangle", length: 80, width: 35 } as const;
    const pair = { species: species("amatitlania-nigrofasciata"), males: 1, females: 1 };
    const ways = (raises: boolean) =>
      remedies(kept([{ ...pair, raises }], { base }, { pH: 7.2, generalHardness: 10 })).remedies;
    expect(ways(false).map(told)).toEqual([["tank"], ["rehome 0"], ["rehome 0"]]);
    expect(ways(true).map(told)).toEqual([["tank"]]);
  });

  test("that males leave of those that fight for few females, not that these leave the males to each other", () => {
    const among = (id: string, males: number, temperature: number) =>
      remedies(kept([{ species: species(id), males, females: 1 }], { sightBreaks: 10 }, { temperature }))
        .remedies;
    const left = (found: readonly Remedy[]) =>
      found.map(({ plan: { groups } }) => [groups[0]?.males, groups[0]?.females]);
    for (const found of [
      among("apistogramma-cacatuoides", 2, 25),
      among("dario-dario", 3, 23),
      among("trichogaster-lalius", 2, 26),
    ]) {
      expect(left(found)).toContainEqual([1, 1]);
      expect(left(found).filter(([males = 0, females]) => males > 1 && females === 0)).toEqual([]);
    }
  });

  test("that a male fighting fish or the females beside it go, planned as one group or as two", () => {
    const betta = species("betta-splendens");
    for (const females of [1, 2]) {
      const tank = { base: { shape: "rectangle", length: 60, width: 30 } } as const;
      const { remedies: found } = remedies(
        kept([{ species: betta, males: 1, females }], tank, { temperature: 26 }),
      );
      expect(found.map(({ plan }) => plan.groups)).toContainEqual([{ species: betta, males: 1, females: 0 }]);
      expect(found.map(({ plan }) => plan.groups)).toContainEqual([{ species: betta, males: 0, females: 1 }]);
    }
  });

  test("the least tank, wide enough to turn, in place of one far too small", () => {
    const tank = { base: { shape: "rectangle", length: 60, width: 30 }, height: 30 } as const;
    const remedy = first(kept([{ species: species("astronotus-ocellatus"), unsexed: 1 }], tank));
    expect(remedy && told(remedy)).toEqual(["tank"]);
    const { base } = remedy?.plan.tank ?? {};
    expect(base?.shape === "rectangle" && base.length >= 120 && base.width >= 36).toBe(true);
  });

  test("a tank that is sold, where one is not much larger than what is needed", () => {
    const largerFor = (tank: Partial<Plan["tank"]>, groups: readonly Group[]) =>
      remedies(kept(groups, tank, { temperature: 24 })).remedies.flatMap(({ plan, moves }) =>
        moves.some(({ kind }) => kind === "tank") ? [plan.tank.base] : [],
      )[0];
    const danios = [{ species: species("danio-rerio"), unsexed: 8 }];
    expect(largerFor({ base: { shape: "rectangle", length: 52, width: 22 } }, danios)).toEqual({
      shape: "rectangle",
      length: 80,
      width: 35,
    });
    const wide = { base: { shape: "rectangle", length: 70, width: 65 } } as const;
    expect(largerFor(wide, danios)).toEqual({ shape: "rectangle", length: 80, width: 65 });
    const inInches = { base: { shape: "rectangle", length: 20, width: 9 }, height: 14, unit: "in" } as const;
    expect(largerFor(inInches, danios)).toMatchObject({ length: 32 });
  });

  test("to give a young pleco away, where all others need is a slightly longer tank", () => {
    const tank = { base: { shape: "rectangle", length: 76, width: 30 }, height: 30 } as const;
    const plan = kept(
      [
        { species: species("pterygoplichthys-pardalis"), juveniles: 1, length: 8 },
        { species: species("gymnocorymbus-ternetzi"), unsexed: 6 },
      ],
      tank,
    );
    const ways = remedies(plan).remedies.map((one) => [...told(one), one.plan.tank.base]);
    expect(ways).toEqual([
      ["tank", { shape: "rectangle", length: 200, width: 70 }],
      ["tank", "rehome 0", { shape: "rectangle", length: 80, width: 35 }],
    ]);
  });

  test("a larger tank that is no lower than the one that is there", () => {
    const monos: Plan = kept(
      [{ species: species("monodactylus-argenteus"), unsexed: 6 }],
      { base: { shape: "rectangle", length: 150, width: 60 }, height: 70 },
      { temperature: 26, pH: 8, generalHardness: 15, salinity: 8 },
    );
    const [first] = remedies(monos).remedies;
    expect(first?.moves.map(({ kind }) => kind)).toContain("tank");
    expect(first?.plan.tank.base).toMatchObject({ length: 180 });
    expect(first?.plan.tank.height).toBe(70);
  });

  test("to take a form that nobody nips at", () => {
    const { remedies: found } = remedies(
      kept(
        [
          { species: species("betta-splendens"), males: 1 },
          { species: species("poecilia-reticulata"), males: 2, females: 4 },
        ],
        {},
        { pH: 7, generalHardness: 10 },
      ),
    );
    const exchange = found.find(({ moves }) => moves[0]?.kind === "form");
    expect(exchange?.plan.groups[1]?.form).toBe("short-finned");
    expect(exchange?.moves[0]?.moved).toBe(6);
  });

  test("to part plecos that rasp others, though nobody knows how high a tank pearl gouramis need", () => {
    const quarrelling = kept(
      [
        { species: species("trichopodus-leerii"), unsexed: 2 },
        { species: species("hyphessobrycon-flammeus"), unsexed: 8 },
        { species: species("pterygoplichthys-pardalis"), unsexed: 3 },
      ],
      { base: { shape: "rectangle", length: 1000, width: 500 }, height: 100 },
      { temperature: 31, pH: 6.9, generalHardness: 12 },
    );
    expect(assessPlan(quarrelling)).toMatchObject({ outcome: "undetermined" });
    expect(assessPlan(quarrelling).open).toContainEqual(
      expect.objectContaining({ of: 0, trait: "space.height", reason: "missing" }),
    );
    expect(first(quarrelling)?.moves.map(({ kind, of }) => [kind, of])).toEqual([
      ["water", undefined],
      ["rehome", 2],
    ]);
  });

  test("nothing to do where nothing is amiss, and what to provide where nothing is said", () => {
    const fine = remedies(kept([{ species: species("danio-rerio"), unsexed: 8 }], {}, { temperature: 23 }));
    expect(fine.remedies.map(told)).toEqual([[]]);
    expect(fine.remedies[0]?.provided).toEqual([]);
    const bare = remedies({
      tank: { base: { shape: "rectangle", length: 100, width: 40 } },
      groups: [{ species: species("danio-rerio"), unsexed: 8 }],
    });
    expect(bare.remedies.map(told)).toEqual([[]]);
    expect(bare.remedies[0]?.provided.map(({ on }) => on)).toContain("tank.cover");
  });

  test("to bring calm company, or to plant so densely that none is needed", () => {
    const shy = kept(
      [{ species: species("trichogaster-lalius"), males: 1, females: 1 }],
      { cover: 0.35, plants: "grown-in" },
      { pH: 7 },
    );
    const asks = assessPlan(shy).conditions.map(({ on }) => on);
    expect(asks).toEqual(["group.company"]);
    const company = allSpecies.filter((one) => factAt(one, "social.settles")?.value);
    const { remedies: found } = remedies(shy, { company });
    expect(found.map(({ moves }) => moves[0]?.kind).slice(0, 2)).toEqual(["cover", "company"]);
  });

  test("to let a filter run for eight weeks, and no longer", () => {
    const plan = kept([{ species: species("danio-rerio"), unsexed: 10 }], {
      filter: { mediaArea: 500, age: 10 },
    });
    const [first] = remedies(plan).remedies;
    expect(first?.moves.map(({ kind }) => kind)).toEqual(["filter"]);
    expect(first?.plan.tank.filter).toEqual({ mediaArea: 500, age: 56 });
  });

  test("what stands in the way where three moves are too few", () => {
    const ids = ["paracheirodon-innesi", "danio-margaritatus", "puntigrus-tetrazona", "danio-rerio"];
    const few = kept(
      ids.map((id) => ({ species: species(id), unsexed: 3 })),
      { cover: 0, lid: false },
      { temperature: 29 },
    );
    const { remedies: found, obstacle } = remedies(few);
    expect(found).toEqual([]);
    expect(assessPlan(few).findings).toContainEqual(obstacle);
  });
});

test("what was wanted at worst too holds at worst, whatever individuals are like", () => {
  const [plan] = spoiledPlans(1, 4);
  if (!plan) throw new Error("no plan");
  const alike = (given: Plan) => ({
    ...given,
    groups: given.groups.map((group) => ({
      ...group,
      species: {
        ...group.species,
        temperament: {
          ...group.species.temperament,
          varies: { value: false, basis: "common-practice" as const },
        },
      },
    })),
  });
  const found = remedies(plan, { atWorst: true });
  for (const remedy of found.remedies) {
    expect(assessPlan(alike(remedy.plan)).bounds.atWorst).toBe("suitable");
    expect(remedy.plan.groups.every(({ species: one }) => allSpecies.includes(one))).toBe(true);
  }
  expect(found.remedies.length > 0 || found.obstacle !== undefined).toBe(true);
});

test("what the strictest source asks for is seen to where it has to hold at worst", () => {
  const neons = kept([{ species: species("paracheirodon-innesi"), unsexed: 10 }]);
  expect(assessPlan(neons).outcome).toBe("suitable");
  expect(assessPlan(neons).bounds.atWorst).toBe("conditional");
  const [softer] = remedies(neons, { atWorst: true }).remedies;
  expect(softer && told(softer)).toEqual(["water"]);
  expect(softer?.bounds.atWorst).toBe("suitable");
});

describe("where nobody can tell for want of a trait", () => {
  const tetras = kept([
    { species: species("megalamphodus-eques"), unsexed: 12 },
    { species: species("gymnocorymbus-ternetzi"), unsexed: 9, raises: true },
  ]);

  test("of which nobody knows whether they cross, either may go", () => {
    const { outcome, findings, open } = assessPlan(tetras);
    expect([outcome, findings.filter((finding) => "couldBe" in finding)]).toEqual(["undetermined", []]);
    expect(open).toContainEqual(expect.objectContaining({ rule: "interbreeding", decides: true }));
    for (const want of ["suitable", "conditional"] as const)
      expect(remedies(tetras, { want }).remedies.map(told)).toEqual([["rehome 1"], ["rehome 0"]]);
  });

  test("that is what stands in the way, before what is asked for", () => {
    const stranger = without(species("danio-rerio"), "water.temperature");
    const alone = kept([{ species: stranger, unsexed: 3 }], { filter: { mediaArea: 0.1, age: 5 } });
    for (const want of ["suitable", "conditional"] as const)
      expect(remedies(alone, { want })).toMatchObject({
        remedies: [],
        obstacle: { reason: "missing", trait: "water.temperature", decides: true },
      });
  });
});

test("whatever is not known of the animals, there is a remedy, or what stands in the way is named", () => {
  const lacking = (one: SpeciesProfile, draw: number): SpeciesProfile =>
    traitPaths.filter((_, index) => index % 7 === draw % 7).reduce(without, one);
  let undetermined = 0;
  for (const [draw, plan] of spoiledPlans(runs(14), seedOf(12)).entries()) {
    const groups = plan.groups.map((group, place) => ({
      ...group,
      species: place === draw % 2 ? lacking(group.species, draw) : group.species,
      ...(place === 0 && draw % 3 === 0 && { raises: true }),
    }));
    if (assessPlan({ ...plan, groups }).outcome === "undetermined") undetermined += 1;
    for (const want of ["suitable", "conditional"] as const) {
      const { remedies: found, obstacle } = remedies({ ...plan, groups }, { want, most: 1 });
      const isTold = (obstacle !== undefined) === (found.length === 0);
      expect([groups.map(({ species: { id } }) => id), want, isTold]).toEqual([
        groups.map(({ species: { id } }) => id),
        want,
        true,
      ]);
    }
  }
  expect(undetermined).toBeGreaterThan(1);
});

test("where conditions may stay, only what rules out is mended", () => {
  const { remedies: found } = remedies(plans["nothing said but the base"] as Plan, { want: "conditional" });
  expect(found.map(told)).toEqual([["rehome 1"], ["rehome 0"]]);
  expect(found.map(({ provided: filled }) => filled)).toEqual([[], []]);
});

test("what is no such wish is refused, and a plan that is none", () => {
  const plan = plans["angelfish and neons"] as Plan;
  expect(() => remedies(plan, { most: 0 })).toThrow(InvalidInputError);
  expect(() => remedies(plan, { want: "fine" as "suitable" })).toThrow(InvalidInputError);
  expect(() => remedies({ ...plan, groups: [] })).toThrow(InvalidInputError);
});

test("males that are no rivals and are by themselves get more males, not twice as many females", () => {
  const endlers = { species: species("poecilia-wingei"), males: 4 };
  const { remedies: found } = remedies(kept([endlers], {}, { pH: 7.4, generalHardness: 12 }));
  expect(found.map(told)).toEqual([["numbers 0"]]);
  expect(found[0]?.plan.groups).toEqual([{ ...endlers, males: 5 }]);
});

test("more males join a male where females would have no peace", () => {
  const plan: Plan = {
    tank: { base: { shape: "rectangle", length: 300, width: 100 }, height: 60 },
    groups: [
      { species: species("mikrogeophagus-altispinosus"), form: "long-fin", males: 1 },
      { species: species("labidochromis-caeruleus"), unsexed: 5 },
    ],
  };
  const [first] = remedies(plan).remedies;
  expect(first?.moves).toMatchObject([
    { kind: "numbers", moved: 0, change: { groups: { 0: { males: 2 } } } },
  ]);
});
