import { describe, expect, test } from "vitest";
import ancistrusCirrhosus from "vivary/catalog/ancistrus-cirrhosus";
import apistogrammaAgassizii from "vivary/catalog/apistogramma-agassizii";
import bettaSplendens from "vivary/catalog/betta-splendens";
import danioRerio from "vivary/catalog/danio-rerio";
import hoplisomaPanda from "vivary/catalog/hoplisoma-panda";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import pethiaConchonius from "vivary/catalog/pethia-conchonius";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import symphysodonAequifasciatus from "vivary/catalog/symphysodon-aequifasciatus";
import synodontisEupterus from "vivary/catalog/synodontis-eupterus";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import { looks, type SeenSign, seenSigns, suspects } from "../../../src/advice";
import { besides, type ShownRule, shownByNone, signsOf } from "../../../src/advice/suspects/signs";
import { assessPlan, type Finding, pairRules, planRules } from "../../../src/compatibility";
import { conditionsExclude } from "../../../src/compatibility/rules/conditions-exclude";
import { finNipping } from "../../../src/compatibility/rules/pair/fin-nipping";
import { predation } from "../../../src/compatibility/rules/pair/predation";
import { cover } from "../../../src/compatibility/rules/plan/cover";
import { lid } from "../../../src/compatibility/rules/plan/lid";
import type { Plan } from "../../../src/plan";
import type { Range } from "../../../src/ranges";
import { adults, animal } from "../../compatibility/animals";
import { planOf } from "../../compatibility/judging";
import { expectRefused } from "../../refused";

/** A tank in which much is wrong. */
const troubled: Plan = {
  tank: {
    base: { shape: "rectangle", length: 100, width: 40 },
    height: 45,
    lid: true,
    cover: 0.2,
    plants: "planted",
    substrate: "coarse-gravel",
    filter: { mediaArea: 2, age: 20 },
  },
  water: { temperature: 26, pH: 7, generalHardness: 8 },
  groups: [
    { species: puntigrusTetrazona, unsexed: 6 },
    { species: pterophyllumScalare, unsexed: 2 },
    { species: hoplisomaPanda, unsexed: 5 },
    { species: ancistrusCirrhosus, males: 1 },
    { species: danioRerio, juveniles: 6, length: 1.5 },
  ],
  offerings: [{ food: "dry", place: "surface" }],
};

const all = suspects(troubled, [...seenSigns]);

const rulesBehind = (sign: SeenSign) =>
  all.filter(({ explains }) => explains.includes(sign)).map(({ finding }) => finding.rule);

describe("what a keeper sees", () => {
  // Common practice, no source: what a keeper of these animals in this tank would think of.
  test.each<[SeenSign, readonly string[]]>([
    ["torn-fins", ["fin-nipping", "acts-own-kind"]],
    ["damaged-skin", ["ground", "fin-nipping"]],
    ["missing-animals", ["predation", "fin-nipping", "filter-nitrogen"]],
    ["gasping", ["oxygen", "filter-nitrogen", "water-temperature"]],
    ["hiding", ["cover", "group-size", "hiding-places"]],
    ["thin", ["feeding"]],
    ["chasing", ["acts-own-kind", "group-size"]],
    ["listless", ["water-temperature", "filter-nitrogen"]],
  ])("%s", (sign, expected) => {
    expect(rulesBehind(sign)).toEqual(expect.arrayContaining([...expected]));
  });

  test("what a finding says to watch for may be asked about, and shows that finding", () => {
    const { findings, met } = assessPlan(troubled);
    const watched = [...findings, ...met].filter(
      ({ rule, weight }) => weight !== "favourable" && besides[rule as ShownRule],
    );
    const shown = watched.flatMap(({ rule, from, watchFor }) => (watchFor ? [{ rule, from, watchFor }] : []));
    expect(shown.length).toBeGreaterThan(10);
    for (const { rule, from, watchFor } of shown) {
      const behind = suspects(troubled, [watchFor]).map(({ finding }) => `${finding.rule} ${finding.from}`);
      expect(behind, watchFor).toContain(`${rule} ${from}`);
    }
  });

  test("torn fins are first the doing of the one that nips, which is to be parted from the other", () => {
    expect(suspects(troubled, ["torn-fins"])[0]).toMatchObject({
      finding: { rule: "fin-nipping", from: 0, to: 1 },
      state: "stands",
      look: "who-bites-whom",
      act: { do: "part" },
      mayBeIllness: true,
    });
  });

  test("thin animals are first those that no food reaches", () => {
    expect(suspects(troubled, ["thin"])[0]).toMatchObject({
      finding: { rule: "feeding" },
      look: "who-eats",
      act: { do: "meet", condition: { on: "group.offerings" } },
    });
  });

  test("dug-up plants are the doing of those that dig", () => {
    const digger = animal("digger", {
      "effects.digs": true,
      "effects.uproots": true,
      "effects.eatsPlants": false,
    });
    const plan = planOf([{ species: digger, unsexed: 2 }], { tank: { plants: "planted" } });
    expect(suspects(plan, ["dug-up-plants"])).toMatchObject([
      { finding: { rule: "plants-at-risk", from: 0 }, look: "plants", act: { do: "watch" } },
    ]);
  });

  test("several signs point first to what explains most of them", () => {
    const found = suspects(troubled, ["torn-fins", "chasing", "thin"]);
    const counts = found.map(({ explains }) => explains.length);
    expect(counts[0]).toBe(3);
    expect(counts).toEqual([...counts].sort((one, other) => other - one));
  });

  test("nothing that no rule explains has a suspect", () => {
    expect(suspects(troubled, [])).toEqual([]);
    expect(suspects(planOf([{ species: animal("a"), unsexed: 1 }]), ["hiding"], { rules: [lid] })).toEqual(
      [],
    );
  });
});

describe("beside what stands against the plan", () => {
  const jumper = animal("jumper", { "space.jumps": "readily" });

  test("what the plan says it meets is to be checked", () => {
    const covered = planOf([{ species: jumper, unsexed: 1 }], { tank: { lid: true } });
    expect(suspects(covered, ["missing-animals"], { rules: [lid] })).toMatchObject([
      { state: "met", look: "around-the-tank", act: { do: "check", condition: { on: "tank.lid" } } },
    ]);
  });

  test("what the plan says is amiss comes before what it does not say", () => {
    const { tank, ...rest } = troubled;
    const { cover, ...unsaid } = tank;
    const found = suspects({ ...rest, tank: unsaid }, ["hiding"]);
    const placeOf = (rule: string) =>
      found.findIndex(({ finding, state }) => finding.rule === rule && state === "stands");
    expect(placeOf("group-size")).toBeGreaterThanOrEqual(0);
    expect(placeOf("cover")).toBeGreaterThan(placeOf("group-size"));
    expect(placeOf("cover")).toBeGreaterThan(placeOf("ground"));
  });

  test("a bully is suspected last, of animals that are peaceful as a kind", () => {
    const peaceful = (id: string) => ({
      species: animal(id, {
        "temperament.acts": [],
        "size.adultLength": adults(6),
        "space.zones": ["midwater"],
        "space.territory": "none",
        "appearance.longFins": false,
      }),
      unsexed: 1,
    });
    const found = suspects(planOf([peaceful("a"), peaceful("b")]), ["chasing"]);
    expect(found.length).toBeGreaterThan(0);
    expect(found).toContainEqual(
      expect.objectContaining({ state: "individual", individual: { group: 0, temper: "bully" } }),
    );
    const states = found.map(({ state }) => state);
    expect(states.indexOf("individual")).toBeGreaterThan(states.lastIndexOf("stands"));
  });

  test("no snail is suspected to chase", () => {
    const snails = { species: animal("snail", { "temperament.acts": [] }, { kind: "snail" }), unsexed: 4 };
    const found = suspects(planOf([snails, { species: jumper, unsexed: 6 }]), ["torn-fins", "chasing"]);
    const bullies = found.filter((one) => one.individual?.temper === "bully");
    expect(bullies.map(({ finding }) => finding.from)).not.toContain(0);
  });

  test("nobody is suspected of a temper that the plan denies", () => {
    const bully = planOf([{ species: jumper, unsexed: 1, temper: "shyer" }]);
    expect(suspects(bully, [...seenSigns]).filter(({ state }) => state === "individual")).toEqual([]);
  });
});

describe("what is worth knowing, where it is seen at work, is mended", () => {
  const tank = { base: { shape: "rectangle", length: 100, width: 40 }, cover: 0.3, lid: true } as const;
  const found = (plan: Plan, sign: SeenSign, rule: string) => {
    const those = suspects(plan, [sign]).filter(
      ({ finding }) => finding.rule === rule && finding.weight === "advisory",
    );
    expect(those.length).toBeGreaterThan(0);
    return those;
  };
  const barbs = { species: pethiaConchonius, unsexed: 8 };

  test("water warmer than is best, by what is best", () => {
    const plan = { tank, water: { temperature: 25 }, groups: [barbs] };
    expect(found(plan, "gasping", "water-temperature")).toMatchObject([
      {
        act: {
          do: "meet",
          condition: { on: "water.temperature", wanted: { min: 18, max: 22, unit: "degC" } },
        },
      },
    ]);
  });

  /** Barbs beside animals that are kept in other water, and its temperature. */
  const besideOthersKept = (kept: Range, temperature: number): Plan => ({
    tank,
    water: { temperature },
    groups: [barbs, { species: animal("warm", { "water.temperature": { kept } }), unsexed: 6 }],
  });

  test("by no more of it than the others can be given", () => {
    const plan = besideOthersKept({ min: 21, max: 26 }, 23);
    const [{ act } = {}] = found(plan, "listless", "water-temperature");
    expect(act).toMatchObject({ do: "meet", condition: { wanted: { min: 20.5, max: 22 } } });
  });

  test("by other water of its own, where the others can be given none of it", () => {
    const plan = besideOthersKept({ min: 24, max: 28 }, 24);
    expect(found(plan, "listless", "water-temperature")).toMatchObject([{ act: { do: "rehouse" } }]);
  });

  test("an open tank above those that leap when frightened, by a lid", () => {
    const leaper = { species: animal("leaper", { "space.jumps": "startled" }), unsexed: 1 };
    expect(found(planOf([leaper], { tank: { lid: false } }), "missing-animals", "lid")).toMatchObject([
      { act: { do: "meet", condition: { on: "tank.lid", wanted: { oneOf: [true] } } } },
    ]);
  });

  test("too many of a solitary kind, by fewer", () => {
    const squeakers = { species: synodontisEupterus, unsexed: 2 };
    expect(found({ tank, groups: [barbs, squeakers] }, "chasing", "group-size")).toMatchObject([
      { act: { do: "meet", condition: { on: "group.count", of: 1, wanted: { max: 1 } } } },
    ]);
  });

  test("sexes that nobody has told apart, by enough females", () => {
    const fish = animal("harem", { "social.femalesPerMale": 2 });
    expect(found(planOf([{ species: fish, unsexed: 6 }]), "chasing", "sex-ratio")).toMatchObject([
      { act: { do: "meet", condition: { on: "group.femalesPerMale", of: 0, wanted: { min: 2 } } } },
    ]);
  });

  test("room that is hardly too little, by more of it", () => {
    const fish = animal("swimmer", { "space.baseLength": [{ least: 105, for: 1 }] });
    expect(found(planOf([{ species: fish, unsexed: 1 }], { tank }), "listless", "longest-run")).toMatchObject(
      [{ act: { do: "meet", condition: { on: "tank.longestRun", wanted: { min: 105, unit: "cm" } } } }],
    );
  });

  test("carbon dioxide, by moved water, whatever current the plan has: what there is does not do", () => {
    const water = { temperature: 25, pH: 6, carbonateHardness: 8 };
    const gasping = (flow?: Plan["tank"]["flow"]) =>
      found(
        { tank: { ...tank, ...(flow && { flow }) }, water, groups: [barbs] },
        "gasping",
        "carbon-dioxide",
      );
    const moved = [{ act: { do: "meet", condition: { on: "tank.flow.strongest" } } }];
    expect(gasping()).toMatchObject(moved);
    expect(gasping({ calmest: "still", strongest: "moderate" })).toMatchObject(moved);
  });

  test("what comes of a young filter, by changes of water", () => {
    const filter = { mediaArea: 3, age: 5 };
    const groups = [{ species: paracheirodonInnesi, unsexed: 10 }];
    expect(found({ tank: { ...tank, filter }, groups }, "listless", "sensitive")).toMatchObject([
      { finding: { measures: { to: { value: "ammonia-nitrite" } } }, act: { do: "change-water" } },
    ]);
  });

  test("soft water that shells fail in, by other water; look at the hardness", () => {
    const snail = animal("snail", { "care.sensitive": ["soft-water", "copper"] }, { kind: "snail" });
    expect(suspects(planOf([{ species: snail, unsexed: 4 }]), ["listless"])).toMatchObject([
      { finding: { rule: "sensitive" }, look: "measure-hardness", act: { do: "rehouse" } },
    ]);
  });

  test("but a chase from a brood passes, and what is eaten of plants is borne with", () => {
    const discus = { species: symphysodonAequifasciatus, unsexed: 6 };
    const plan: Plan = { tank: { ...tank, plants: "planted" }, groups: [discus, barbs] };
    for (const { act } of found(plan, "chasing", "acts-others")) expect(act).toEqual({ do: "watch" });
    for (const { act } of found(plan, "eaten-plants", "plants-at-risk")) expect(act).toEqual({ do: "watch" });
  });
});

describe("what no plan gives to one without taking it from another is not to be seen to", () => {
  test("of water, it takes other water of its own", () => {
    const plan = planOf(
      [
        { species: tanichthysAlbonubes, unsexed: 8 },
        { species: apistogrammaAgassizii, males: 1, females: 2 },
      ],
      { water: { temperature: 25 } },
    );
    const ofWater = suspects(plan, ["listless"]).filter(
      ({ finding }) => finding.rule === "water-temperature",
    );
    expect(ofWater.map(({ state, act }) => [state, act.do])).toEqual([
      ["stands", "rehouse"],
      ["met", "check"],
    ]);
  });

  test("of cover where others need the water open, no more is planted", () => {
    const bare = { "space.openWater": 0, "space.cover": 0 } as const;
    const [hider, swimmer] = [
      animal("hider", { ...bare, "space.cover": 0.6 }),
      animal("swimmer", { ...bare, "space.openWater": 0.5 }),
    ];
    const told = (...species: readonly (typeof hider)[]) =>
      suspects(
        planOf(
          species.map((one) => ({ species: one, unsexed: 1 })),
          { tank: { cover: 0.3 } },
        ),
        seenSigns,
      )
        .filter(({ finding }) => finding.rule === "cover" && finding.weight === "restricting")
        .map(({ act, state }) => [state, act.do]);
    expect(told(hider)).toEqual([["stands", "meet"]]);
    expect(told(hider, swimmer)).toEqual([["stands", "rehouse"]]);
  });

  test("of one animal that would harm as the one sex what it spares as the other, they are parted", () => {
    const plan = planOf([
      { species: bettaSplendens, unsexed: 1 },
      { species: trichogasterChuna, unsexed: 2 },
    ]);
    const wantedSexes = suspects(plan, ["torn-fins"]).flatMap(({ act }) =>
      "condition" in act && act.condition.on === "group.sex" ? [act.condition.wanted] : [],
    );
    expect(wantedSexes).toEqual([{ oneOf: ["female"] }]);
  });
});

test("what a keeper would have to do first is behind nothing that is seen", () => {
  const remedied = [{ species: hoplisomaPanda, unsexed: 6 }];
  const tank = { base: { shape: "rectangle", length: 100, width: 40 } } as const;
  const { findings } = assessPlan({ tank, groups: remedied });
  const told = (all: readonly Finding[]) =>
    all.flatMap((finding) => (finding.rule === "sensitive" ? (finding.measures?.to?.value ?? []) : []));
  expect(told(findings)).toContain("salt");
  const behind = suspects({ tank, groups: remedied }, [...seenSigns]).map(({ finding }) => finding);
  expect(told(behind).filter((what) => what !== "ammonia-nitrite")).toEqual([]);
});

test("every rule shows by some sign, or is named as one that does not", () => {
  const ids = [...pairRules, ...planRules, conditionsExclude].map(({ id }) => id).sort();
  expect([...Object.keys(besides), ...shownByNone].sort()).toEqual(ids);
});

test("every reason against a plan of a rule that shows has a sign, but for what a keeper would have to do first", () => {
  const { findings, met } = assessPlan(troubled);
  const against = [...findings, ...met].filter(({ weight }) => weight !== "favourable");
  const silent = new Set<string>(shownByNone);
  const isDone = (finding: Finding) =>
    finding.rule === "sensitive" &&
    ["copper", "salt", "handling"].includes(finding.measures?.to?.value as string);
  expect(against.some(isDone)).toBe(true);
  for (const finding of against)
    expect([finding.rule, signsOf(finding).length > 0]).toEqual([
      finding.rule,
      !silent.has(finding.rule) && !isDone(finding),
    ]);
});

test("whatever is suspected is among what the rules say, and comes with something to look at and to do", () => {
  const { findings, met } = assessPlan(troubled, { rules: [predation, finNipping, cover, lid] });
  const found = suspects(troubled, [...seenSigns], { rules: [predation, finNipping, cover, lid] });
  for (const { finding, state, look, act } of found) {
    if (state !== "individual") expect(state === "stands" ? findings : met).toContainEqual(finding);
    expect(looks).toContain(look);
    expect("condition" in act).toBe(finding.weight === "restricting" || act.do === "meet");
  }
});

test("what is no sign, no plan and no rule is refused", () => {
  // @ts-expect-error: no sign
  expectRefused(() => suspects(troubled, ["hiding", "sneezing"]), "signs[1]");
  // @ts-expect-error: no list
  expectRefused(() => suspects(troubled, "hiding"), "signs");
  expectRefused(() => suspects(troubled, ["hiding"], { rules: [] }), "rules");
  const { groups: _, ...tank } = troubled;
  // @ts-expect-error: no groups
  expectRefused(() => suspects(tank, ["hiding"]), "groups");
});
