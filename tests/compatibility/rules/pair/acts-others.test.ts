import { describe, expect, test } from "vitest";
import amatitlaniaNigrofasciata from "vivary/catalog/amatitlania-nigrofasciata";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { actsOthers } from "../../../../src/compatibility/rules/pair/acts-others";
import type { Temper } from "../../../../src/plan";
import type { Kind, TraitValue as Value, Zone } from "../../../../src/species";
import { adults, adultsBySex, animal, type Stated } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

type Act = Value<"temperament.acts">[number];

/** Of those that get away when they are chased. */
const agile: Stated = { "diet.pace": "ordinary", "appearance.longFins": false };

const doing = (act: Act, more: Stated = {}) =>
  animal("doer", {
    "temperament.acts": [act],
    "size.adultLength": adults(8),
    "space.zones": ["midwater"],
    "space.territory": "none",
    "space.openWater": 0,
    ...more,
  });
const other = (length = 5, zones: readonly Zone[] = ["midwater"], more: Stated = {}, kind: Kind = "fish") =>
  animal(
    "other",
    {
      "temperament.acts": [],
      "size.adultLength": adults(length),
      "space.zones": zones,
      "space.openWater": 0,
      ...agile,
      ...more,
    },
    { kind },
  );
const found = (...[a, b]: [ReturnType<typeof doing>, ReturnType<typeof other>]) =>
  pairBy(actsOthers, { species: a }, { species: b }).findings;
const weights = (...pair: Parameters<typeof found>) => found(...pair).map(({ weight }) => weight);

const atAny = (does: Act["does"], when?: Act["when"]): Act => ({
  does,
  target: "any",
  ...(when && { when }),
});
const cover = { on: "tank.cover", wanted: { min: 0.3 } };

test("killing blocks, and so does biting anyone at any time", () => {
  expect(found(doing(atAny("kills")), other())).toMatchObject([
    { weight: "blocking", watchFor: "missing-animals" },
  ]);
  expect(found(doing(atAny("bites")), other())).toMatchObject([
    { weight: "blocking", watchFor: "torn-fins" },
  ]);
  expect(weights(doing(atAny("bites", "always")), other())).toEqual(["blocking"]);
});

test("two acts that come to the same chase are told once", () => {
  const acts: readonly Act[] = [atAny("chases"), { does: "chases", target: "smaller" }];
  const found = pairBy(
    actsOthers,
    { species: doing(atAny("chases"), { "temperament.acts": acts }) },
    { species: other() },
  ).findings;
  expect(found).toMatchObject([{ weight: "restricting", condition: cover }]);
});

test("chases need cover to get out of sight, bites when crowded as well", () => {
  expect(found(doing(atAny("chases")), other())).toMatchObject([{ weight: "restricting", condition: cover }]);
  expect(found(doing(atAny("bites", "crowded")), other())).toMatchObject([
    { weight: "restricting", condition: cover },
  ]);
});

test("who is always chased and cannot get away has no peace: the slow, and long fins that are not quick", () => {
  const beside = (more: Stated, length = 5) =>
    weights(doing(atAny("chases")), other(length, ["midwater"], more));
  expect(beside({ "diet.pace": "slow" })).toEqual(["blocking"]);
  expect(beside({ "appearance.longFins": true })).toEqual(["blocking"]);
  expect(beside({ "appearance.longFins": true, "diet.pace": "fast" })).toEqual(["restricting"]);
  // The doer measures 8 cm, half of 16.
  expect(beside({ "diet.pace": "slow" }, 16)).toEqual(["blocking"]);
  expect(beside({ "diet.pace": "slow" }, 16.1)).toEqual(["restricting"]);
});

test("a fast one that chases the smaller gives no peace to those that cannot get away; a slower one, and quick prey, need cover", () => {
  const chase: Act = { does: "chases", target: "smaller" };
  const slow: Stated = { "diet.pace": "slow" };
  const fast: Stated = { "diet.pace": "fast" };
  expect(weights(doing(chase, fast), other(5, ["midwater"], slow))).toEqual(["blocking"]);
  expect(weights(doing(chase), other(5, ["midwater"], slow))).toEqual(["blocking"]);
  expect(weights(doing(chase, { "diet.pace": "ordinary" }), other(5, ["midwater"], slow))).toEqual([
    "restricting",
  ]);
  expect(weights(doing(chase, fast), other(5))).toEqual(["restricting"]);
  expect(weights(doing(chase, fast), other(7.9, ["midwater"], slow))).toEqual([]);
});

test("small fish have no rest from what chases at any time and is twice as long, unless they are fast", () => {
  for (const target of ["any", "smaller"] as const) {
    const chases = doing({ does: "chases", target });
    expect(found(chases, other(4))).toMatchObject([
      { weight: "blocking", measures: { act: { value: "chases" } } },
    ]);
    expect(weights(chases, other(4.1))).toEqual(["restricting"]);
    expect(weights(chases, other(4, ["midwater"], { "diet.pace": "fast" }))).toEqual(["restricting"]);
    expect(weights(chases, other(4, ["surface"]))).toEqual([]);
  }
  expect(weights(doing(atAny("chases")), other(3, ["midwater"], {}, "shrimp"))).toEqual(["restricting"]);
  expect(weights(doing(atAny("chases", "guarding-brood")), other(3))).toEqual(["advisory"]);
});

test("the females of those that chase do hardly less, shorter as they are", () => {
  const chasers = doing({ does: "chases", target: "smaller" }, { "size.adultLength": adultsBySex(10, 8) });
  expect(weights(chasers, other(5))).toEqual(["blocking"]);
  expect(weights(chasers, other(7.9))).toEqual(["restricting"]);
  expect(weights(chasers, other(8))).toEqual([]);
});

test("long fins do not hinder those of which males and females bite others off", () => {
  const bites = (doer?: Act["doer"]): Stated => ({
    "appearance.longFins": true,
    "temperament.acts": [
      { does: "bites", target: "any", when: "guarding-brood", ...(doer && { doer }) },
    ] satisfies Act[],
  });
  const chased = (more: Stated) =>
    found(doing(atAny("chases")), other(5, ["midwater"], more)).flatMap(({ from, weight }) =>
      from === 0 ? weight : [],
    );
  expect(chased(bites())).toEqual(["restricting"]);
  expect(chased(bites("male"))).toEqual(["blocking"]);
  expect(chased({ ...bites(), "diet.pace": "slow" })).toEqual(["blocking"]);
});

test("young that grow to half its length may hold out", () => {
  const young = { species: other(5), stage: "juvenile", length: 2 } as const;
  const { findings } = pairBy(actsOthers, { species: doing(atAny("chases")) }, young);
  expect(findings).toMatchObject([{ weight: "restricting" }]);
});

test("what is chased for want of room needs cover only if it cannot get away, in the next part of the water too", () => {
  const crowded = doing(atAny("chases", "crowded"), { "space.zones": ["bottom"] });
  for (const hampered of [{ "diet.pace": "slow" }, { "appearance.longFins": true }] as const) {
    expect(found(crowded, other(5, ["midwater"], hampered))).toMatchObject([
      { weight: "restricting", condition: cover },
    ]);
    expect(weights(crowded, other(5, ["surface"], hampered))).toEqual([]);
  }
  expect(weights(crowded, other(5, ["midwater"]))).toEqual(["advisory"]);
});

test("chases when crowded, at food or beside a brood are worth knowing, and so is robbing food", () => {
  for (const when of ["crowded", "feeding", "breeding", "guarding-brood"] as const) {
    expect(weights(doing(atAny("chases", when)), other()), when).toEqual(["advisory"]);
  }
  expect(weights(doing(atAny("robs-food")), other())).toEqual(["advisory"]);
});

describe("who bites those that are clearly smaller", () => {
  const biter = doing({ does: "bites", target: "smaller" });
  const kept = (length: number, party: object = {}) =>
    pairBy(actsOthers, { species: biter }, { species: other(length), ...party }).findings;

  test("lets young in that grow to hold their own once they are long enough, and never blocks for want of a length", () => {
    // Eight tenths of 8 cm.
    const longer = [{ condition: { on: "group.length", of: 1, wanted: { min: 6.4 } } }];
    expect(kept(7, { stage: "juvenile" })).toMatchObject(longer);
    expect(kept(7, { stage: "juvenile", length: 3 })).toMatchObject(longer);
    expect(kept(7, { length: 6.4 })).toEqual([]);
    expect(kept(6, { stage: "juvenile" })).toMatchObject([{ weight: "blocking" }]);
  });

  test("lives with the sex that is long enough, where the plan leaves it open", () => {
    const species = other(6, ["midwater"], { "size.adultLength": adultsBySex(6, 7) });
    const beside = (sex?: "male" | "female") =>
      pairBy(actsOthers, { species: biter }, { species, sex }).findings;
    expect(beside()).toMatchObject([
      { condition: { on: "group.sex", of: 1, wanted: { oneOf: ["female"] } }, watchFor: "torn-fins" },
    ]);
    expect(beside("female")).toEqual([]);
    expect(beside("male")).toMatchObject([{ weight: "blocking" }]);
  });

  test("is of the shorter sex, or meets the longer one, where only both together do", () => {
    const longMales = doing({ does: "bites", target: "smaller" }, { "size.adultLength": adultsBySex(10, 8) });
    const species = other(6, ["midwater"], { "size.adultLength": adultsBySex(6, 7) });
    expect(pairBy(actsOthers, { species: longMales }, { species }).findings).toMatchObject([
      { condition: { on: "group.sex", of: 0, wanted: { oneOf: ["female"] } } },
      { condition: { on: "group.sex", of: 1, wanted: { oneOf: ["female"] } } },
    ]);
  });
});

test("who never meets is never chased; who says nothing of its place may meet", () => {
  expect(weights(doing(atAny("chases")), other(5, ["bottom"]))).toEqual([]);
  expect(weights(doing(atAny("chases")), other(5, ["bottom", "midwater"]))).toEqual(["restricting"]);
  const anywhere = animal("other", { "temperament.acts": [], "size.adultLength": adults(5), ...agile });
  expect(weights(doing(atAny("chases")), anywhere)).toEqual(["restricting"]);
});

test("nobody chases a snail, though bites reach it", () => {
  expect(weights(doing(atAny("chases")), other(3, ["midwater"], {}, "snail"))).toEqual([]);
  expect(weights(doing(atAny("bites")), other(3, ["midwater"], {}, "snail"))).toEqual(["blocking"]);
});

test("acts at its own species or at look-alikes, at fins or at mucus are other rules'", () => {
  expect(weights(doing({ does: "kills", target: "own-kind" }), other())).toEqual([]);
  expect(weights(doing({ does: "kills", target: "look-alike" }), other())).toEqual([]);
  expect(weights(doing(atAny("nips-fins")), other())).toEqual([]);
  expect(weights(doing(atAny("rasps-mucus")), other())).toEqual([]);
  const species = doing(atAny("kills"));
  expect(pairBy(actsOthers, { species }, { species }).findings).toEqual([]);
});

describe("bites at trailing fins", () => {
  const bites = doing({ does: "bites", target: "long-finned" });
  const finned = (longFins?: boolean) =>
    other(5, ["midwater"], longFins === undefined ? {} : { "appearance.longFins": longFins });

  test("block, and a form with short fins is named in its place", () => {
    expect(found(bites, finned(true))).toMatchObject([
      {
        weight: "blocking",
        from: 0,
        to: 1,
        instead: { on: "group.longFins", of: 1, wanted: { oneOf: [false] } },
      },
    ]);
    expect(found(bites, finned(false))).toEqual([]);
  });

  test("are never joined to the conditions", () => {
    const { conditions } = pairBy(actsOthers, { species: bites }, { species: finned(true) });
    expect(conditions).toEqual([]);
  });

  test("count where nobody described the fins", () => {
    const nameless: Stated = { "temperament.acts": [], "size.adultLength": adults(5) };
    expect(weights(bites, animal("other", nameless))).toEqual(["blocking"]);
  });

  test("no other act names a form", () => {
    expect(found(doing(atAny("bites")), finned(true))[0]).not.toHaveProperty("instead");
  });
});

test("chases in the open end where there is cover, no more than the open water leaves", () => {
  const groups = (openWater: number) => [
    { species: doing(atAny("chases")), unsexed: 1 },
    { species: other(5, ["midwater"], { "space.openWater": openWater }), unsexed: 1 },
  ];
  const withCover = (inTank: number, openWater = 0) =>
    weighed(planBy(actsOthers, groups(openWater), { tank: { cover: inTank } }));
  expect(withCover(0.3)).toEqual({ findings: [], met: ["restricting"] });
  expect(withCover(0.29)).toEqual({ findings: ["restricting"], met: [] });
  expect(withCover(0.2, 0.8)).toEqual({ findings: [], met: ["restricting"] });
  expect(withCover(0.19, 0.8)).toEqual({ findings: ["restricting"], met: [] });
});

describe("who chases or bites smaller ones", () => {
  const chases = doing({ does: "chases", target: "smaller" });

  test("leaves those alone that are not clearly shorter", () => {
    // It measures 8 cm, and a lead of a fifth of its length decides.
    expect(weights(chases, other(6.3))).toEqual(["restricting"]);
    expect(weights(chases, other(6.4))).toEqual([]);
    expect(weights(chases, other(9))).toEqual([]);
    expect(weights(doing({ does: "bites", target: "smaller" }), other(6.3))).toEqual(["blocking"]);
    expect(weights(doing({ does: "bites", target: "smaller" }), other(6.4))).toEqual([]);
  });

  test("never asks for a length: cover ends it, and so does the length that the plan states", () => {
    const beside = (length?: number) =>
      planBy(actsOthers, [
        { species: chases, unsexed: 1 },
        { species: other(5), unsexed: 1, length },
      ]);
    expect(beside().findings).toMatchObject([{ weight: "restricting", condition: cover }]);
    expect(beside(6.3).findings).toHaveLength(1);
    expect(beside(6.4).findings).toEqual([]);
  });

  test("rules out what is half as long, by the larger sex of either, whichever the plan names", () => {
    const chased = { ...agile, "size.adultLength": adultsBySex(5, 3) };
    const beside = (lead: number, sex?: "male" | "female") =>
      pairBy(
        actsOthers,
        { species: doing({ does: "chases", target: "smaller" }, { "size.adultLength": adults(lead) }) },
        { species: other(5, ["midwater"], chased), ...(sex && { sex }) },
      ).findings.map(({ weight }) => weight);
    for (const sex of [undefined, "male", "female"] as const) {
      expect(beside(9, sex)).toEqual(["restricting"]);
      expect(beside(10, sex)).toEqual(["blocking"]);
    }
  });

  test("counts as grown, however small it is today", () => {
    const young = { species: chases, juveniles: 1, length: 2 };
    expect(planBy(actsOthers, [young, { species: other(5), unsexed: 1 }]).findings).toMatchObject([
      { weight: "restricting" },
    ]);
  });

  test("stays open where its own length is unknown, cover or not", () => {
    const { size: _, ...unmeasured } = doing({ does: "chases", target: "smaller" });
    const groups = [
      { species: unmeasured, unsexed: 1 },
      { species: other(5), unsexed: 1 },
    ];
    const { outcome, bounds } = planBy(actsOthers, groups, { tank: { cover: 1 } });
    expect(outcome).toBe("undetermined");
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
  });
});

describe("a guarded brood", () => {
  const nest: Stated = { "space.territory": { area: 1000, zone: "bottom", holder: "pair" } };
  const guards = (does: Act["does"], more: Stated = nest) => doing(atAny(does, "guarding-brood"), more);
  const tankOf = (length: number, males = 1, females = 1) =>
    weighed(
      planBy(
        actsOthers,
        [
          { species: guards("bites"), males, females },
          { species: other(), unsexed: 1 },
        ],
        { tank: { base: { shape: "rectangle", length, width: 40 }, cover: 0.5 } },
      ),
    );

  test("needs a pair", () => {
    expect(tankOf(20, 2, 0)).toEqual({ findings: [], met: [] });
    expect(tankOf(20)).toEqual({ findings: ["restricting"], met: [] });
  });

  test("is defended with bites: a floor of which the parents' place takes no more than half", () => {
    expect(found(guards("bites"), other())).toMatchObject([
      { condition: { on: "tank.footprint", wanted: { min: 2000, unit: "cm2" } } },
    ]);
    expect(tankOf(50)).toEqual({ findings: [], met: ["restricting"] });
    expect(tankOf(49)).toEqual({ findings: ["restricting"], met: [] });
  });

  test("is bitten for on the ground, where others come back in the dark: no more than a third of the floor", () => {
    const third = [{ condition: { on: "tank.footprint", wanted: { min: 3000, unit: "cm2" } } }];
    expect(found(guards("bites"), other(5, ["bottom"]))).toMatchObject(third);
    const unknown = animal("other", { "size.adultLength": adults(5), "temperament.acts": [] });
    expect(found(guards("bites"), unknown)).toMatchObject(third);
    expect(found(guards("bites"), other(5, ["bottom", "midwater"]))).toMatchObject([
      { condition: { wanted: { min: 2000 } } },
    ]);
  });

  test("needs cover where the parents hold no place", () => {
    expect(found(guards("bites", {}), other())).toMatchObject([{ condition: cover }]);
  });

  test("reaches the next part of the water, not the one beyond; breeding does not reach so far", () => {
    const low: Stated = { ...nest, "space.zones": ["bottom"] };
    expect(weights(guards("bites", low), other(5, ["midwater"]))).toEqual(["restricting"]);
    expect(weights(guards("chases", low), other(5, ["midwater"]))).toEqual(["advisory"]);
    expect(weights(guards("bites", low), other(5, ["surface"]))).toEqual([]);
    expect(weights(doing(atAny("bites", "breeding"), low), other(5, ["midwater"]))).toEqual([]);
  });

  test("comes just as well where the plan lists male and female apart", () => {
    const groups = [
      { species: guards("bites"), males: 1 },
      { species: guards("bites"), females: 1 },
      { species: other(), unsexed: 1 },
    ];
    const tank = { base: { shape: "rectangle", length: 40, width: 30 } } as const;
    expect(weighed(planBy(actsOthers, groups, { tank })).findings).toContain("restricting");
  });
});

describe("what individuals are like", () => {
  const beside = (act: Act | undefined, temper: Temper | undefined, length = 5, more: Stated = {}) =>
    planBy(actsOthers, [
      {
        species: act ? doing(act, more) : doing(atAny("chases"), { "temperament.acts": [], ...more }),
        unsexed: 1,
        temper,
      },
      { species: other(length), unsexed: 1 },
    ]).findings;

  test("bolder ones do at any time what others do when crowded", () => {
    expect(beside(atAny("bites", "crowded"), "typical")).toMatchObject([{ weight: "restricting" }]);
    expect(beside(atAny("bites", "crowded"), "bolder")).toMatchObject([{ weight: "blocking" }]);
    expect(beside(atAny("chases", "crowded"), "bolder")).toMatchObject([
      { weight: "restricting", condition: cover },
    ]);
    expect(beside(atAny("chases", "guarding-brood"), "bolder")).toEqual([]);
  });

  test("a bully chases all that are not clearly larger: something between, and room", () => {
    const sight = { weight: "restricting", condition: { on: "tank.sightBreaks", wanted: { min: 1 } } };
    expect(beside(undefined, "bully")).toMatchObject([sight]);
    expect(beside(undefined, "bully", 10)).toMatchObject([sight]);
    expect(beside(undefined, "bully", 10.1)).toEqual([]);
    expect(beside(undefined, "bolder")).toEqual([]);
    const place: Stated = { "space.territory": { area: 9000, zone: "midwater", holder: "each" } };
    expect(beside(undefined, "bully", 5, place)).toMatchObject([
      sight,
      { condition: { on: "tank.footprint", wanted: { min: 18000 } } },
    ]);
  });

  test("a bully leaves alone who never meets it, and snails", () => {
    const bully = {
      species: doing(atAny("chases"), { "temperament.acts": [] }),
      unsexed: 1,
      temper: "bully",
    } as const;
    const among = (species: ReturnType<typeof other>) =>
      planBy(actsOthers, [bully, { species, unsexed: 1 }]).findings;
    expect(among(other(5, ["bottom"]))).toEqual([]);
    expect(among(other(3, ["midwater"], {}, "snail"))).toEqual([]);
  });

  test("no snail is a bully", () => {
    const snail = animal(
      "snail",
      { "temperament.acts": [], "size.adultLength": adults(3) },
      { kind: "snail" },
    );
    const groups = [
      { species: snail, unsexed: 1, temper: "bully" as const },
      { species: other(3, ["midwater"]), unsexed: 1 },
    ];
    expect(planBy(actsOthers, groups).findings).toEqual([]);
  });
});

describe("in a keeper's tank", () => {
  test("a convict cichlid bites beside its brood, also what swims above it; a neon does nothing", () => {
    const { findings } = pairBy(
      actsOthers,
      { species: amatitlaniaNigrofasciata },
      { species: paracheirodonInnesi },
    );
    expect(findings.length).toBeGreaterThan(0);
    expect(findings.every(({ from }) => from === 0)).toBe(true);
  });

  test("neons and corys leave each other alone", () => {
    expect(
      pairBy(actsOthers, { species: paracheirodonInnesi }, { species: osteogasterAenea }).findings,
    ).toEqual([]);
  });
});
