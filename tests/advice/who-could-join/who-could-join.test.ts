import { describe, expect, test } from "vitest";
import { allSpecies, speciesById } from "vivary/catalog";
import { whoCouldJoin } from "../../../src/advice";
import { assessPlan, type Finding, planner } from "../../../src/compatibility";
import { InvalidInputError } from "../../../src/errors";
import { isMet, type Plan } from "../../../src/plan";
import { sentence } from "../../../src/report";
import { factAt, type SpeciesProfile } from "../../../src/species";
import { someSpecies } from "../../drawn";
import { keptTank as tank } from "../kept-tank";
import { eachAlone } from "./by-assessing-each";

function species(id: string): SpeciesProfile {
  const found = speciesById(id);
  if (!found) throw new Error(id);
  return found;
}

const community: Plan = {
  tank,
  water: { temperature: 25, pH: 6.8, generalHardness: 8 },
  groups: [
    { species: species("trigonostigma-heteromorpha"), unsexed: 10 },
    { species: species("hoplisoma-sterbai"), unsexed: 8 },
  ],
  offerings: [
    { food: "dry", place: "midwater" },
    { food: "dry", place: "bottom", light: "dusk" },
  ],
};

const small = { shape: "rectangle", length: 60, width: 30 } as const;
const soft = { temperature: 25, pH: 6.5, generalHardness: 4 };

/** Some of the catalog, and those of the plan. */
const candidates = [...someSpecies(35, 0), ...community.groups.map(({ species: one }) => one)];

describe("of a plan that works", () => {
  const { joins, refused } = whoCouldJoin(community, candidates);

  test("every species joins or is refused, as judging all of them together tells", () => {
    expect(assessPlan(community).outcome).toBe("suitable");
    const joining = new Set(joins.map(({ species: one }) => one.id));
    expect(joins.length + refused.length).toBe(candidates.length);
    expect(joins.length).toBeGreaterThan(3);
    const start = planner(community);
    for (const one of candidates) {
      const unsexed = factAt(one, "social.group")?.value.least ?? 1;
      const { outcome } = start.with({ add: [{ species: one, unsexed }] });
      expect([one.id, joining.has(one.id)]).toEqual([one.id, outcome === "suitable"]);
    }
  });

  test("each refusal has a reason that judging all together tells too", () => {
    for (const { species: one, because } of refused) {
      const unsexed = factAt(one, "social.group")?.value.least ?? 1;
      const verdict = assessPlan({ ...community, groups: [...community.groups, { species: one, unsexed }] });
      if ("reason" in because) expect(verdict.open.map(signOf)).toContain(signOf(because));
      else {
        expect(verdict.findings.map(signOf)).toContain(signOf(because));
        expect(
          because.weight === "blocking" || because.weight === "restricting" || "couldBe" in because,
        ).toBe(true);
      }
    }
  });

  test("the widest margin comes first, and none lies outside what is asked for", () => {
    const margins = joins.map(({ margin }) => margin);
    expect(margins).toEqual([...margins].sort((one, other) => other - one));
    expect(margins.every((margin) => margin >= 0 && margin <= 1)).toBe(true);
  });
});

const signOf = ({ rule, ...told }: Finding | { rule: string; of?: number; trait?: string }) =>
  JSON.stringify([rule, "weight" in told ? [told.weight, told.from, told.to] : told]);

test("water at the edge of what a species is given leaves it no margin", () => {
  const { joins } = whoCouldJoin({ ...community, water: { ...community.water, temperature: 26.5 } }, [
    species("paracheirodon-innesi"),
  ]);
  expect(joins[0]?.margin).toBe(0);
});

test("a tank that lacks something for a newcomer leaves it no margin, though the plan is no worse for it", () => {
  const short: Plan = {
    ...community,
    tank: { ...tank, base: { shape: "rectangle", length: 60, width: 40 } },
    groups: [{ species: species("hyphessobrycon-amandae"), unsexed: 4 }],
  };
  const { joins } = whoCouldJoin(short, [species("hoplisoma-sterbai"), species("boraras-brigittae")]);
  const marginOf = (id: string) => joins.find(({ species: one }) => one.id === id)?.margin;
  expect(marginOf("hoplisoma-sterbai")).toBe(0);
  expect(marginOf("boraras-brigittae")).toBeGreaterThan(0);
});

test("a fact that the plan leaves out opens the tank to nobody whom it does not hold", () => {
  const cube: Plan = {
    tank: { ...tank, base: { shape: "rectangle", length: 30, width: 30 }, height: 30 },
    water: { temperature: 22, pH: 7.2, generalHardness: 10 },
    groups: [{ species: species("neocaridina-davidi"), unsexed: 10 }],
  };
  const { flow: _, ...still } = cube.tank;
  const unsaid = { ...cube, tank: still };
  expect([cube, unsaid].map((plan) => assessPlan(plan).outcome)).toEqual(["suitable", "conditional"]);
  const [said, open] = [cube, unsaid].map((plan) => whoCouldJoin(plan, allSpecies));
  const fitting = new Set(said?.joins.map(({ species: one }) => one.id));
  expect(fitting.size).toBeGreaterThan(0);
  const further = open?.joins.filter(({ species: one }) => !fitting.has(one.id)) ?? [];
  for (const { species: one, group } of further) {
    const { conditions } = assessPlan({ ...unsaid, groups: [...unsaid.groups, group] });
    const lacking = conditions.filter(({ on }) => /^(tank|water)[.]/.test(on) && !on.startsWith("tank.flow"));
    expect([one.id, lacking]).toEqual([one.id, []]);
  }
  const sterbai = open?.refused.find(({ species: one }) => one.id === "hoplisoma-sterbai");
  expect(["water-temperature", "longest-run", "footprint"]).toContain(sterbai?.because.rule);
});

test("a tank too short for those already there lets in nobody who asks for a longer one than they do", () => {
  const danios = { species: species("danio-rerio"), unsexed: 10 };
  const needed = (plan: Plan, of: number) =>
    assessPlan(plan).findings.flatMap((finding) =>
      finding.weight === "restricting" && finding.from === of && finding.condition.on === "tank.longestRun"
        ? [Object(finding.condition.wanted).min]
        : [],
    );
  for (const length of [50, 60, 70]) {
    const short = { ...tank, base: { shape: "rectangle" as const, length, width: 40 } };
    const plan: Plan = {
      tank: short,
      water: { temperature: 24, pH: 7, generalHardness: 8 },
      groups: [danios],
    };
    const [asked = 0] = needed(plan, 0);
    expect(asked).toBeGreaterThan(length);
    for (const { species: one, group } of whoCouldJoin(plan, allSpecies).joins) {
      const own = needed({ ...plan, groups: [danios, group] }, 1);
      expect([one.id, own.filter((run) => run > asked)]).toEqual([one.id, []]);
    }
  }
});

test("one doubt about one animal opens the tank to nobody for whom it is too small, or its water wrong", () => {
  const doubtful: Plan = {
    tank: {
      base: { shape: "rectangle", length: 150, width: 60 },
      height: 50,
      cover: 0.4,
      lid: true,
      filter: { mediaArea: 6, age: 300 },
    },
    water: { temperature: 25, pH: 6.8, generalHardness: 5 },
    groups: [
      { species: species("betta-splendens"), males: 1 },
      { species: species("caridina-logemanni"), unsexed: 5 },
    ],
  };
  const before = assessPlan(doubtful);
  expect(before.outcome).toBe("undetermined");
  const asked = lacking(before.findings, doubtful);
  const { joins, refused } = whoCouldJoin(doubtful, allSpecies);
  expect(joins.length).toBeGreaterThan(20);
  for (const { species: one, group } of joins) {
    const joined = { ...doubtful, groups: [...doubtful.groups, group] };
    const own = assessPlan(joined).findings.filter(({ from }) => from === 2);
    expect([one.id, lacking(own, joined).filter((on) => !asked.includes(on))]).toEqual([one.id, []]);
  }
  const reasons = ["pterygoplichthys-gibbiceps", "sphaerichthys-osphromenoides", "xiphophorus-hellerii"].map(
    (id) => refused.find(({ species: one }) => one.id === id)?.because.rule,
  );
  expect(reasons).toEqual(["longest-run", "water-ph", "water-hardness"]);
});

/** Of which facts of tank and water a plan says otherwise than is asked. */
const lacking = (findings: readonly Finding[], plan: Plan) =>
  findings.flatMap((finding) =>
    finding.weight === "restricting" &&
    /^(tank|water)[.]/.test(finding.condition.on) &&
    isMet(finding.condition, plan) === false
      ? [finding.condition.on]
      : [],
  );

describe("a species of which nobody knows a trait", () => {
  const betta = { species: species("betta-splendens"), males: 1 };

  test("is refused for what stands against it, where nothing hangs on the trait", () => {
    const eartheater = species("satanoperca-leucosticta");
    expect(factAt(eartheater, "space.height")).toBeUndefined();
    const [no] = whoCouldJoin(community, [eartheater]).refused;
    expect(no?.because).toMatchObject({ rule: "longest-run", weight: "restricting" });
  });

  test("joins a plan that does not work where nothing rules it out, as one that does", () => {
    const pleco = species("panaqolus-maccus");
    expect(factAt(pleco, "water.airBreathing")).toBeUndefined();
    const quarrel: Plan = { tank, groups: [betta, { ...betta }] };
    expect(assessPlan(quarrel).outcome).toBe("unsuitable");
    expect(whoCouldJoin({ tank, groups: [betta] }, [pleco]).refused).toEqual([]);
    expect(whoCouldJoin(quarrel, [pleco]).refused).toEqual([]);
  });

  test("is refused for the trait on which it hangs, not for the first of those that are missing", () => {
    const known = species("panaqolus-maccus");
    const { temperature: _, ...water } = known.water ?? {};
    for (const groups of [[], [betta]]) {
      const [no] = whoCouldJoin({ tank, groups }, [{ ...known, water }]).refused;
      expect(no?.because).toMatchObject({ trait: "water.temperature", decides: true });
    }
  });
});

describe("a species of which nobody knows how many belong together", () => {
  const unnumbered = (id: string) => {
    const known = species(id);
    const { group: _, ...social } = known.social ?? {};
    return { ...known, social };
  };

  test("is not let in as one by itself, and the trait that is missing is the reason", () => {
    for (const plan of [community, { ...community, groups: [] }]) {
      expect(whoCouldJoin(plan, [species("paracheirodon-axelrodi")]).refused).toEqual([]);
      const { joins, refused } = whoCouldJoin(plan, [unnumbered("paracheirodon-axelrodi")]);
      expect(joins).toEqual([]);
      expect(refused[0]?.because).toMatchObject({
        reason: "missing",
        trait: "social.group",
        of: plan.groups.length,
      });
    }
  });

  test("comes as one where it is known to live alone, or to be at ease by itself", () => {
    const some = ["betta-splendens", "atya-gabonensis"].map(unnumbered);
    expect(some.map((one) => factAt(one, "social.living")?.value)).toEqual(["alone", "either"]);
    const { joins } = whoCouldJoin({ ...community, groups: [] }, some);
    expect(joins.map(({ group }) => group.unsexed)).toEqual([1, 1]);
  });

  test("is refused for what is graver, where there is such", () => {
    const neons = [{ species: species("paracheirodon-innesi"), unsexed: 10 }];
    const [no] = whoCouldJoin({ ...community, groups: neons }, [unnumbered("pterophyllum-scalare")]).refused;
    expect(no?.because).toMatchObject({ rule: "predation", weight: "blocking" });
  });
});

test("whom a newcomer settles, who takes its food and whom it chases is told, and sought by", () => {
  const shy: Plan = {
    ...community,
    tank: { ...tank, plants: "grown-in" },
    groups: [{ species: species("trichogaster-lalius"), males: 1, females: 1 }],
  };
  const some = ["trigonostigma-heteromorpha", "ancistrus-cirrhosus", "apistogramma-borellii"].map(species);
  const { joins } = whoCouldJoin(shy, some);
  const settling = whoCouldJoin(shy, some, { settles: 0 }).joins;
  expect(settling.length).toBeGreaterThan(0);
  expect(settling.length).toBeLessThan(joins.length);
  expect(settling.every(({ settles }) => settles.includes(0))).toBe(true);
  const peaceful = whoCouldJoin(shy, some, { chasesNobody: true, robbedByNobody: true }).joins;
  expect(peaceful.length).toBeGreaterThan(0);
  expect(peaceful.length).toBeLessThan(joins.length);
  expect(peaceful.every(({ chases, robbedBy }) => chases.length + robbedBy.length === 0)).toBe(true);
});

test("where the plan does not work, those are named whom nothing rules out there, and tank and water suit", () => {
  const predators: Plan = {
    ...community,
    groups: [
      { species: species("pterophyllum-scalare"), unsexed: 2 },
      { species: species("paracheirodon-innesi"), unsexed: 10 },
    ],
  };
  const { joins, refused } = whoCouldJoin(predators, [
    species("hoplisoma-sterbai"),
    species("boraras-brigittae"),
    species("chromobotia-macracanthus"),
  ]);
  expect(joins.map(({ species: one }) => one.id)).toEqual(["hoplisoma-sterbai"]);
  expect(refused.map(({ because }) => because.rule)).toEqual(["predation", "longest-run"]);
});

test("a group that is not there is refused", () => {
  expect(() => whoCouldJoin(community, [], { settles: 2 })).toThrow(InvalidInputError);
  expect(() => whoCouldJoin({ ...community, groups: [] }, [], { settles: 0 })).toThrow(InvalidInputError);
});

test("why a species cannot join is told in words, with the group that it was judged as", () => {
  const { refused } = whoCouldJoin(community, candidates);
  const told = refused.map(({ group, because }) =>
    sentence(assessPlan({ ...community, groups: [...community.groups, group] }), because),
  );
  expect(told.length).toBeGreaterThan(10);
  expect(told.filter((words) => !/^\S.*\.$/.test(words))).toEqual([]);
});

describe("what can live in my tank, where nobody is yet", () => {
  const tanks: readonly (readonly [name: string, plan: Plan])[] = [
    ["of which only the size is known", { tank: { base: tank.base, height: 50 }, groups: [] }],
    ["small, with soft water", { tank: { base: small, height: 30 }, water: soft, groups: [] }],
    ["kept well", { ...community, groups: [] }],
    ["cold", { ...community, water: { temperature: 8, pH: 7, generalHardness: 10 }, groups: [] }],
  ];

  test.each(tanks)("a tank %s has whom judging each of them alone lets live there", (_, plan) => {
    const { joins, refused } = whoCouldJoin(plan, candidates);
    expect([
      ...joins.map(({ species: { id }, outcome, margin }) => ({ species: id, outcome, margin })),
      ...refused.map(({ species: { id }, because }) => ({ species: id, because })),
    ]).toEqual(eachAlone(plan, candidates));
  });

  test("what the tank does not say is not taken for fine", () => {
    const { joins } = whoCouldJoin({ tank: { base: tank.base, height: 50 }, groups: [] }, allSpecies);
    expect(joins.length).toBeGreaterThan(20);
    expect(joins.filter(({ outcome }) => outcome !== "conditional")).toEqual([]);
  });

  test("nobody lives there for whom it is too small, or too cold", () => {
    const narrow = whoCouldJoin({ tank: { base: small, height: 30 }, groups: [] }, [
      species("pterophyllum-scalare"),
    ]);
    expect(narrow.refused[0]?.because).toMatchObject({ rule: "longest-run", weight: "restricting" });
    const cold = whoCouldJoin({ tank, water: { temperature: 8 }, groups: [] }, [
      species("symphysodon-aequifasciatus"),
    ]);
    expect(cold.refused[0]?.because.rule).toBe("water-temperature");
  });

  test("a tank that cannot be is refused, with nobody to come as well", () => {
    expect(() => whoCouldJoin({ tank: { base: small, height: -3 }, groups: [] }, [])).toThrow(
      InvalidInputError,
    );
    const misspelt = { ...community, groups: [], lamp: true } as Plan;
    expect(() => whoCouldJoin(misspelt, [])).toThrow(InvalidInputError);
    expect(whoCouldJoin({ ...community, groups: [] }, [])).toEqual({ joins: [], refused: [] });
  });
});
