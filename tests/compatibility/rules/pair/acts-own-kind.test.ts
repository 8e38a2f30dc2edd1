import { describe, expect, test } from "vitest";
import amatitlaniaNigrofasciata from "vivary/catalog/amatitlania-nigrofasciata";
import ancistrusCirrhosus from "vivary/catalog/ancistrus-cirrhosus";
import bettaSplendens from "vivary/catalog/betta-splendens";
import danioRerio from "vivary/catalog/danio-rerio";
import macropodusOpercularis from "vivary/catalog/macropodus-opercularis";
import potamotrygonMotoro from "vivary/catalog/potamotrygon-motoro";
import pterophyllumAltum from "vivary/catalog/pterophyllum-altum";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import { actsOwnKind } from "../../../../src/compatibility/rules/pair/acts-own-kind";
import type { Group } from "../../../../src/plan";
import type { TraitValue as Value } from "../../../../src/species";
import { animal, type Stated } from "../../animals";
import { type Changes, pairBy, planBy, weighed } from "../../judging";

type Act = Value<"temperament.acts">[number];

const shoal: Stated = { "social.living": "shoal", "social.group": { least: 6 } };
const alone: Stated = { "social.living": "alone" };
const harem: Stated = { "social.living": "harem" };
const pair: Stated = { "social.living": "pair" };
const onGround: Stated = { "space.territory": { area: 1200, zone: "bottom", holder: "male" } };

const doing = (act: Act, more: Stated = harem) =>
  animal("doer", { "temperament.acts": [act], "space.territory": "none", "space.openWater": 0, ...more });
/** Two of them, judged once from one to the other. */
const two = (act: Act, more?: Stated) => {
  const species = doing(act, more);
  return pairBy(actsOwnKind, { species }, { species }).findings.filter(({ from }) => from === 0);
};
/** In a tank in which there is little room, unless a test says otherwise. */
const among = (act: Act, more: Stated, group: Omit<Group, "species">, { tank }: Changes = {}) =>
  planBy(actsOwnKind, [{ species: doing(act, more), ...group }], {
    tank: { base: { shape: "rectangle", length: 20, width: 20 }, ...tank },
  });
/** The conditions of what is found, in order. */
const asked = ({ findings }: ReturnType<typeof planBy>) =>
  findings.map((finding) => ("condition" in finding ? finding.condition : finding.weight));

const sightBreaks = (min: number) => ({ on: "tank.sightBreaks", wanted: { min } });
const footprint = (min: number) => ({ on: "tank.footprint", wanted: { min, unit: "cm2" } });

describe("killing", () => {
  test("blocks, at any time", () => {
    expect(two({ does: "kills", target: "own-kind" })).toMatchObject([
      { weight: "blocking", watchFor: "missing-animals" },
    ]);
    expect(two({ does: "kills", target: "own-kind", when: "breeding" })).toMatchObject([
      { weight: "blocking" },
    ]);
  });

  test("of rivals restricts to the sex that does not, where the plan does not say of which they are", () => {
    const kills: Act = { does: "kills", doer: "male", target: "own-sex" };
    expect(asked(among(kills, alone, { unsexed: 3 }))).toMatchObject([
      { on: "group.sex", of: 0, wanted: { oneOf: ["female"] } },
    ]);
    expect(weighed(among(kills, alone, { females: 3 }))).toEqual({ findings: [], met: [] });
    expect(weighed(among(kills, alone, { males: 2 })).findings).toEqual(["blocking"]);
    expect(weighed(among(kills, alone, { males: 1, females: 2 })).findings).toEqual([]);
    const species = doing(kills, alone);
    const male = { species, sex: "male" } as const;
    expect(pairBy(actsOwnKind, male, male).outcome).toBe("unsuitable");
    for (const [pair, of] of [
      [pairBy(actsOwnKind, male, { species }), 1],
      [pairBy(actsOwnKind, { species }, male), 0],
    ] as const)
      expect(pair.conditions).toMatchObject([{ on: "group.sex", of, wanted: { oneOf: ["female"] } }]);
  });
});

test("two that kill over a brood are left open while nobody knows how many belong together", () => {
  const kills: Act = { does: "kills", target: "own-sex", when: "guarding-brood" };
  const known: Stated = { ...pair, "social.group": { least: 6 }, "social.femalesPerMale": 0 };
  for (const group of [{ males: 2 }, { unsexed: 2 }]) {
    expect(among(kills, known, group).outcome).toBe("unsuitable");
    for (const trait of Object.keys(known)) {
      const { bounds } = among(kills, { ...known, [trait]: undefined }, group);
      expect(bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
    }
  }
  const two: Stated = { ...known, "social.group": { least: 2 } };
  expect(among(kills, two, { males: 1, females: 1 }).outcome).toBe("suitable");
});

test("females that are to join kill each other, be those that are there one group or two", () => {
  const kills: Act = { does: "kills", doer: "female", target: "own-sex" };
  const avoiding: Stated = { ...pair, "social.group": { least: 2, avoid: { min: 3, max: 5 } } };
  const species = doing(kills, { ...avoiding, "social.femalesPerMale": 0 });
  const outcomeOf = (groups: readonly Omit<Group, "species">[]) =>
    planBy(
      actsOwnKind,
      groups.map((group) => ({ species, ...group })),
    ).outcome;
  expect(outcomeOf([{ males: 1, unsexed: 2 }])).toBe("unsuitable");
  expect(outcomeOf([{ males: 1, unsexed: 1 }, { unsexed: 1 }])).toBe("unsuitable");
});

describe("bites at any time", () => {
  const bites: Act = { does: "bites", target: "own-kind" };

  test("block among those that live alone, and where nobody knows how they live", () => {
    expect(two(bites, alone)).toMatchObject([{ weight: "blocking", watchFor: "torn-fins" }]);
    expect(two({ does: "bites", target: "any" }, alone)).toMatchObject([{ weight: "blocking" }]);
    expect(two(bites, {})).toMatchObject([{ weight: "blocking" }]);
  });

  test("of rivals that live alone restrict to the sex that does not bite, if there is one", () => {
    const males: Act = { does: "bites", doer: "male", target: "own-sex" };
    expect(asked(among(males, alone, { unsexed: 2 }))).toMatchObject([
      { on: "group.sex", of: 0, wanted: { oneOf: ["female"] } },
    ]);
    expect(weighed(among(males, alone, { males: 2 })).findings).toEqual(["blocking"]);
    expect(weighed(among({ ...males, doer: undefined } as never, alone, { unsexed: 2 })).findings).toEqual([
      "blocking",
    ]);
  });

  test("of others need room and sight breaks for each male of the plan", () => {
    const males: Act = { does: "bites", doer: "male", target: "own-sex" };
    const kept = (count: number) => among(males, { ...harem, ...onGround }, { males: count, females: 4 });
    expect(asked(kept(1))).toEqual([]);
    expect(asked(kept(2))).toMatchObject([sightBreaks(1), footprint(2400)]);
    expect(asked(kept(3))).toMatchObject([sightBreaks(2), footprint(3600)]);
  });

  test("are spread where a few are worse off than many; elsewhere each needs room", () => {
    const social = (avoid?: { min: number; max: number }): Stated => ({
      ...onGround,
      "social.living": "group",
      "social.group": { least: 10, ...(avoid && { avoid }) },
    });
    const count = (min: number) => ({ on: "group.count", of: 0, wanted: { min } });
    const few = { min: 2, max: 9 };
    expect(asked(among(bites, social(few), { unsexed: 6 }))).toMatchObject([count(10)]);
    expect(weighed(among(bites, social(few), { unsexed: 12 })).findings).toEqual([]);
    expect(asked(among(bites, social(), { unsexed: 12 }))).toMatchObject([sightBreaks(11), footprint(14400)]);
  });

  test("end where the tank has both", () => {
    const males: Act = { does: "bites", doer: "male", target: "own-sex" };
    const kept = (length: number, breaks: number) =>
      weighed(
        among(
          males,
          { ...harem, ...onGround },
          { males: 2, females: 4 },
          { tank: { base: { shape: "rectangle", length, width: 40 }, sightBreaks: breaks } },
        ),
      );
    expect(kept(60, 1)).toEqual({ findings: [], met: ["restricting", "restricting"] });
    expect(kept(59, 1)).toEqual({ findings: ["restricting"], met: ["restricting"] });
    expect(kept(60, 0)).toEqual({ findings: ["restricting"], met: ["restricting"] });
  });

  test("of the sex that they wear out need cover", () => {
    expect(
      asked(among({ does: "bites", doer: "male", target: "other-sex" }, harem, { males: 1, females: 3 })),
    ).toMatchObject([{ on: "tank.cover", wanted: { min: 0.3 } }]);
  });

  test("of the sex that they wear out rest by their number where they use no cover", () => {
    const act: Act = { does: "bites", doer: "male", target: "other-sex" };
    const bare = { ...harem, "space.cover": 0, "social.femalesPerMale": 2 };
    const twoEach = { on: "group.femalesPerMale", of: 0, wanted: { min: 2 } };
    expect(asked(among(act, bare, { males: 2, females: 2 }))).toMatchObject([twoEach]);
    expect(weighed(among(act, bare, { males: 1, females: 2 }))).toEqual({
      findings: [],
      met: ["restricting"],
    });
    expect(asked(among(act, bare, { unsexed: 4 }))).toEqual(["advisory"]);
    expect(asked(among(act, bare, { males: 1, unsexed: 2 }))).toEqual(["advisory"]);
    expect(asked(among(act, bare, { males: 2, unsexed: 2 }))).toMatchObject([twoEach]);
    const rays = { species: potamotrygonMotoro };
    const facts = new Set(pairBy(actsOwnKind, rays, rays).conditions.map(({ on }) => on));
    expect(facts).toEqual(new Set(["group.femalesPerMale"]));
  });
});

describe("a mate is no rival", () => {
  const bites: Act = { does: "bites", target: "own-kind" };

  test("a pair by itself lives in peace; two of which nobody says who is who may be rivals", () => {
    expect(asked(among(bites, pair, { males: 1, females: 1 }))).toEqual([]);
    expect(asked(among(bites, pair, { unsexed: 2 }))).toMatchObject([sightBreaks(1)]);
    const species = doing(bites, pair);
    expect(pairBy(actsOwnKind, { species, sex: "male" }, { species, sex: "female" }).outcome).toBe(
      "suitable",
    );
  });

  test("each further pair needs a place of its own", () => {
    expect(asked(among(bites, pair, { males: 2, females: 2 }))).toMatchObject([sightBreaks(1)]);
    expect(asked(among(bites, pair, { unsexed: 3 }))).toMatchObject([sightBreaks(1)]);
    expect(asked(among(bites, pair, { unsexed: 6 }))).toMatchObject([sightBreaks(2)]);
  });

  test("two of one sex are no pair", () => {
    expect(asked(among(bites, pair, { males: 2 }))).toMatchObject([sightBreaks(1)]);
    const species = doing(bites, pair);
    expect(pairBy(actsOwnKind, { species, sex: "male" }, { species, sex: "male" }).outcome).toBe(
      "conditional",
    );
  });
});

describe("males that chase each other", () => {
  const act: Act = { does: "chases", doer: "male", target: "own-sex" };
  const species = doing(act);

  test("need another male to chase", () => {
    const outcome = (a: "male" | "female", b: "male" | "female") =>
      pairBy(actsOwnKind, { species, sex: a }, { species, sex: b }).outcome;
    expect(outcome("male", "male")).toBe("conditional");
    expect(outcome("male", "female")).toBe("suitable");
    expect(outcome("female", "female")).toBe("suitable");
  });

  test("leave a group with one male in peace; two need room and something between them, not one fewer", () => {
    expect(asked(among(act, harem, { males: 1, females: 4 }))).toEqual([]);
    expect(asked(among(act, { ...harem, ...onGround }, { males: 2, females: 3 }))).toMatchObject([
      sightBreaks(1),
      footprint(2400),
    ]);
  });

  test("count as half of those whose sex nobody knows", () => {
    expect(asked(among(act, harem, { unsexed: 6 }))).toMatchObject([sightBreaks(2)]);
  });

  test("are two males in one tank even if the plan lists them apart", () => {
    const apart = [
      { species, males: 1 },
      { species, males: 1 },
    ];
    expect(weighed(planBy(actsOwnKind, apart)).findings).toContain("restricting");
  });
});

describe("how many of them spread a chase", () => {
  const chases: Act = { does: "chases", target: "own-kind" };

  test("a shoal large enough", () => {
    expect(asked(among(chases, shoal, { unsexed: 5 }))).toMatchObject([
      { on: "group.count", of: 0, wanted: { min: 6 } },
    ]);
    expect(weighed(among(chases, shoal, { unsexed: 6 }))).toEqual({ findings: [], met: ["restricting"] });
  });

  test("past a number at which one takes all the harm", () => {
    const avoiding: Stated = { ...shoal, "social.group": { least: 6, avoid: { min: 3, max: 8 } } };
    expect(asked(among(chases, avoiding, { unsexed: 7 }))).toMatchObject([
      { on: "group.count", wanted: { min: 9 } },
    ]);
  });

  test("none of a kind that lives in threes, of biters, or of loners", () => {
    const few: Stated = { ...shoal, "social.group": { least: 3 } };
    expect(asked(among(chases, few, { unsexed: 5 }))).toMatchObject([sightBreaks(4)]);
    expect(asked(among({ ...chases, does: "bites" }, shoal, { unsexed: 6 }))).toMatchObject([sightBreaks(5)]);
    expect(asked(among(chases, alone, { unsexed: 2 }))).toMatchObject([sightBreaks(1), "advisory"]);
    expect(asked(among(chases, alone, { unsexed: 1 }))).toEqual([]);
  });
});

describe("a single animal", () => {
  const kills = { does: "kills", target: "own-kind" } as const;

  test("is judged with the others that are wanted beside it", () => {
    const three: Stated = {
      "social.living": "group",
      "social.group": { least: 3 },
      "social.femalesPerMale": 0,
    };
    const bites = { does: "bites", target: "own-kind" } as const;
    expect(asked(among(bites, three, { unsexed: 1 }))).toMatchObject([sightBreaks(2)]);
    expect(asked(among(kills, three, { unsexed: 1 }))).toEqual(["blocking"]);
    const male = { ...bites, target: "own-sex", doer: "male" } as const;
    expect(asked(among(male, three, { males: 1 }))).toEqual([]);
    const ofMales = among({ ...bites, target: "any" }, three, { unsexed: 1, temper: "bully" });
    expect(asked(ofMales)).toMatchObject([sightBreaks(2), sightBreaks(1)]);
  });

  test("harms none where it lives alone, or where one is enough", () => {
    const one: Stated = {
      "social.living": "group",
      "social.group": { least: 1 },
      "social.femalesPerMale": 0,
    };
    expect(among(kills, alone, { unsexed: 1 }).open).toEqual([]);
    expect(among(kills, one, { unsexed: 1 })).toMatchObject({ outcome: "suitable", open: [] });
  });

  test("of a kind of which nobody knows how many live together may be joined by others that it kills", () => {
    const { outcome, bounds, open } = among(kills, { "social.living": "group" }, { unsexed: 1 });
    expect(outcome).toBe("undetermined");
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
    expect(open).toMatchObject([{ trait: "social.group", reason: "missing" }]);
  });
});

test("males that wear out females do so with females only, and cover lets these rest", () => {
  const act: Act = { does: "chases", doer: "male", target: "other-sex" };
  expect(asked(among(act, harem, { males: 2 }))).toEqual([]);
  expect(asked(among(act, harem, { males: 1, females: 2 }))).toMatchObject([
    { on: "tank.cover", wanted: { min: 0.3 } },
  ]);
  expect(weighed(among(act, harem, { males: 1, females: 2 }, { tank: { cover: 0.3 } }))).toEqual({
    findings: [],
    met: ["restricting"],
  });
});

describe("when crowded", () => {
  const crowded = (does: "bites" | "chases"): Act => ({ does, target: "own-kind", when: "crowded" });

  test("bites need cover, and the floor that each asks", () => {
    const each: Stated = { "space.territory": { area: 500, zone: "bottom", holder: "each" } };
    expect(asked(among(crowded("bites"), { ...harem, ...each }, { unsexed: 4 }))).toMatchObject([
      { on: "tank.cover", wanted: { min: 0.3 } },
      footprint(2000),
    ]);
    expect(asked(among(crowded("bites"), harem, { unsexed: 4 }))).toMatchObject([{ on: "tank.cover" }]);
  });

  test("chases are worth knowing", () => {
    expect(asked(among(crowded("chases"), harem, { unsexed: 4 }))).toEqual(["advisory"]);
  });

  test("counts at any time among bolder ones, and never among a bolder loner", () => {
    expect(asked(among(crowded("chases"), harem, { unsexed: 4, temper: "bolder" }))).toMatchObject([
      sightBreaks(1),
    ]);
    expect(weighed(among(crowded("bites"), alone, { unsexed: 2, temper: "bolder" })).findings).toEqual([
      "blocking",
    ]);
    expect(asked(among(crowded("bites"), alone, { unsexed: 1, temper: "bolder" }))).toEqual([]);
  });
});

test("bolder angelfish of a shoal need the cover that others need who bite when crowded", () => {
  const kept = (temper?: "bolder" | "bully") =>
    planBy(actsOwnKind, [{ species: pterophyllumAltum, unsexed: 6, temper }]);
  for (const verdict of [kept(), kept("bolder"), kept("bully")])
    expect(verdict.conditions).toContainEqual(
      expect.objectContaining({ on: "tank.cover", wanted: { min: 0.3, unit: "1" } }),
    );
});

describe("a bully", () => {
  test("chases its own kind too, however many there are", () => {
    const peaceful = animal("doer", { "temperament.acts": [], "space.territory": "none", ...shoal });
    const kept = (unsexed: number, temper?: "bully" | "bolder") =>
      planBy(actsOwnKind, [
        { species: peaceful, unsexed: 1, temper },
        { species: peaceful, unsexed },
      ]);
    expect(asked(kept(20, "bully"))).toMatchObject([sightBreaks(1)]);
    expect(asked(kept(20, "bolder"))).toEqual([]);
    expect(kept(20, "bully").findings.every(({ from }) => from === 0)).toBe(true);
  });

  test("alone has nobody to chase", () => {
    const peaceful = animal("doer", { "temperament.acts": [], "space.territory": "none" });
    expect(planBy(actsOwnKind, [{ species: peaceful, unsexed: 1, temper: "bully" }]).findings).toEqual([]);
  });
});

describe("those that live alone", () => {
  const chases: Act = { does: "chases", target: "own-kind" };
  const roomy = { tank: { base: { shape: "rectangle", length: 200, width: 60 }, sightBreaks: 5 } } as const;

  test("may not bear one another, whatever room they have: nobody can tell", () => {
    const kept = among(chases, { ...alone, ...onGround }, { unsexed: 2 }, roomy);
    expect(kept).toMatchObject({
      outcome: "undetermined",
      findings: [{ weight: "advisory", couldBe: "blocking", measures: { act: { value: "chases" } } }],
    });
    expect(among(chases, { ...pair, ...onGround }, { unsexed: 2 }, roomy).outcome).toBe("suitable");
  });

  test("and do nothing to each other live as others do", () => {
    expect(asked(among({ ...chases, target: "long-finned" }, alone, { unsexed: 2 }))).toEqual([]);
    expect(asked(among({ ...chases, when: "crowded" }, alone, { unsexed: 2 }))).toEqual(["advisory"]);
  });
});

test("a male that breeds with one female falls on her, one that guards with her does not", () => {
  const breeds = (act: Partial<Act>): Act => ({
    does: "chases",
    doer: "male",
    target: "other-sex",
    when: "breeding",
    ...act,
  });
  const mates = { males: 1, females: 1 };
  expect(asked(among(breeds({}), pair, mates))).toEqual(["advisory"]);
  const alone = breeds({ target: "any", when: "guarding-brood" });
  expect(asked(among(alone, pair, mates))).toEqual(["advisory"]);
  const { doer: _, ...both } = alone;
  expect(asked(among(both, pair, mates))).toEqual([]);
  expect(asked(among(breeds({ target: "own-sex" }), pair, { unsexed: 2 }))).toEqual([]);
});

describe("a brood", () => {
  const guards = (does: "chases" | "bites"): Act => ({ does, target: "own-kind", when: "guarding-brood" });
  const nesting: Stated = { ...pair, "space.territory": { area: 1000, zone: "bottom", holder: "pair" } };

  test("comes only where both sexes may be, and leaves a pair by itself", () => {
    expect(asked(among(guards("bites"), nesting, { females: 4 }))).toEqual([]);
    expect(asked(among(guards("bites"), nesting, { males: 1, females: 1 }))).toEqual([]);
  });

  test("is defended with bites against further pairs: room for each, and for company beside one", () => {
    expect(asked(among(guards("bites"), nesting, { males: 2, females: 2 }))).toMatchObject([
      sightBreaks(1),
      footprint(2000),
    ]);
    expect(asked(among(guards("bites"), nesting, { males: 3, females: 3 }))).toMatchObject([
      sightBreaks(2),
      footprint(3000),
    ]);
  });

  test("and room are held by pairs where a group of no pairs does", () => {
    const grouped: Stated = { ...nesting, "social.living": "group" };
    const biting: Act = { does: "bites", target: "own-kind" };
    expect(asked(among(biting, grouped, { unsexed: 5 }))).toMatchObject([sightBreaks(2), footprint(3000)]);
    expect(asked(among(biting, grouped, { males: 1, females: 1 }))).toEqual([]);
    expect(asked(among(biting, grouped, { females: 3 }))).toMatchObject([sightBreaks(2), footprint(3000)]);
  });

  test("is no matter between a male and the females of its harem", () => {
    const place = { area: 1000, zone: "bottom", holder: "male" } as const;
    const harem: Stated = { ...pair, "social.living": "harem", "space.territory": place };
    const chasing: Act = { does: "chases", target: "any" };
    expect(asked(among(chasing, harem, { males: 1, females: 4 }))).toEqual([]);
    expect(asked(among(chasing, harem, { males: 2, females: 6 }))).toMatchObject([
      sightBreaks(1),
      footprint(2000),
    ]);
    expect(asked(among(chasing, harem, { females: 3 }))).toMatchObject([sightBreaks(2), footprint(3000)]);
  });

  test("is defended by chases, which pass", () => {
    expect(asked(among(guards("chases"), nesting, { males: 2, females: 2 }))).toEqual(["advisory"]);
    expect(asked(among({ ...guards("chases"), when: "breeding" }, nesting, { unsexed: 4 }))).toEqual([
      "advisory",
    ]);
  });

  test("comes just as well where the plan lists male and female apart", () => {
    const species = doing(guards("bites"), nesting);
    const apart = [
      { species, males: 1 },
      { species, females: 3 },
    ];
    expect(weighed(planBy(actsOwnKind, apart)).findings).toContain("restricting");
  });
});

describe("what happens at food, or does no harm", () => {
  test("is worth knowing", () => {
    expect(two({ does: "chases", target: "own-kind", when: "feeding" })).toMatchObject([
      { weight: "advisory" },
    ]);
    expect(two({ does: "robs-food", target: "own-kind" })).toMatchObject([{ weight: "advisory" }]);
  });

  test("acts at other species are none of this rule's", () => {
    expect(two({ does: "bites", target: "look-alike" })).toEqual([]);
    const [species, other] = [doing({ does: "kills", target: "own-kind" }), animal("other", {})];
    expect(pairBy(actsOwnKind, { species }, { species: other }).findings).toEqual([]);
  });
});

describe("young animals grow up", () => {
  const once = { value: "adult" };

  test("what they do from a stage on they will do, and the finding says so", () => {
    const act: Act = { does: "chases", target: "own-kind", from: "adult" };
    const [young] = among(act, shoal, { juveniles: 3 }).findings;
    expect(young).toMatchObject({ weight: "restricting", measures: { once } });
    const [grown] = among(act, shoal, { unsexed: 3 }).findings;
    expect(grown).toMatchObject({ weight: "restricting" });
    expect(grown?.measures).not.toHaveProperty("once");
  });

  test("and they will breed", () => {
    expect(
      among({ does: "bites", target: "own-kind", when: "guarding-brood" }, pair, { juveniles: 4 }).findings,
    ).toMatchObject([{ measures: { once } }]);
  });
});

describe("in a keeper's tank", () => {
  test("two male bettas kill each other", () => {
    const male = { species: bettaSplendens, sex: "male" } as const;
    expect(pairBy(actsOwnKind, male, male).outcome).toBe("unsuitable");
    expect(planBy(actsOwnKind, [{ species: bettaSplendens, males: 2 }]).outcome).toBe("unsuitable");
    expect(
      planBy(actsOwnKind, [
        { species: bettaSplendens, males: 1 },
        { species: bettaSplendens, form: "plakat", males: 1 },
      ]).outcome,
    ).toBe("unsuitable");
  });

  test("male paradise fish fight to the death, and a pair lives on where she can hide", () => {
    const of = (group: Omit<Group, "species">, cover?: number) =>
      planBy(actsOwnKind, [{ species: macropodusOpercularis, ...group }], {
        tank: { base: { shape: "rectangle", length: 80, width: 37.5 }, sightBreaks: 1, cover },
      }).outcome;
    expect([of({ males: 2 }, 0.3), of({ males: 4 }, 0.3)]).toEqual(["unsuitable", "unsuitable"]);
    expect(of({ males: 1, females: 1 }, 0.3)).toBe("suitable");
    expect(of({ males: 1, females: 1 })).toBe("conditional");
  });

  test("two bettas of which nobody says the sex may only be females, and nobody can tell how these live", () => {
    expect(pairBy(actsOwnKind, { species: bettaSplendens }, { species: bettaSplendens })).toMatchObject({
      outcome: "undetermined",
      bounds: { atBest: "conditional", atWorst: "unsuitable" },
    });
    expect(asked(planBy(actsOwnKind, [{ species: bettaSplendens, unsexed: 2 }]))).toContainEqual(
      expect.objectContaining({ on: "group.sex", wanted: { oneOf: ["female"] } }),
    );
  });

  test("bettas that may only be females need what so many females need", () => {
    const asked = (group: Omit<Group, "species">) =>
      planBy(actsOwnKind, [{ species: bettaSplendens, ...group }]).conditions.map(({ on, wanted }) => ({
        on,
        wanted,
      }));
    const needed = asked({ females: 13 });
    expect(needed).toContainEqual({ on: "tank.sightBreaks", wanted: { min: 12 } });
    const isOther = ({ on }: { readonly on: string }) => on !== "group.sex";
    expect(asked({ females: 6, juveniles: 7 }).filter(isOther)).toEqual(needed);
    expect(asked({ unsexed: 13 }).filter(isOther)).toEqual(needed);
  });

  test("a betta alone is at peace", () => {
    expect(planBy(actsOwnKind, [{ species: bettaSplendens, males: 1 }]).outcome).toBe("suitable");
  });

  test("tiger barbs and danios chase each other, and spread it in a shoal", () => {
    for (const species of [puntigrusTetrazona, danioRerio]) {
      expect(planBy(actsOwnKind, [{ species, unsexed: 3 }]).outcome).toBe("conditional");
      expect(planBy(actsOwnKind, [{ species, unsexed: 12 }]).outcome).toBe("suitable");
    }
  });

  test("white clouds leave each other alone", () => {
    expect(planBy(actsOwnKind, [{ species: tanichthysAlbonubes, unsexed: 2 }]).findings).toEqual([]);
  });

  test("two male bristlenoses need room and something between them, one with females lives in peace", () => {
    const species = ancistrusCirrhosus;
    expect(planBy(actsOwnKind, [{ species, males: 2, females: 2 }]).outcome).toBe("conditional");
    expect(planBy(actsOwnKind, [{ species, males: 1, females: 2 }], { tank: { cover: 0.4 } }).outcome).toBe(
      "suitable",
    );
  });

  test("convict cichlids beside the pair are bitten", () => {
    expect(
      planBy(actsOwnKind, [{ species: amatitlaniaNigrofasciata, males: 2, females: 2 }]).outcome,
    ).not.toBe("suitable");
  });
});
