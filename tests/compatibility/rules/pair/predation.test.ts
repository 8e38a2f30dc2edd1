import { describe, expect, test } from "vitest";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import bettaSplendens from "vivary/catalog/betta-splendens";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import caridinaMultidentata from "vivary/catalog/caridina-multidentata";
import neocaridinaDavidi from "vivary/catalog/neocaridina-davidi";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import sewelliaLineolata from "vivary/catalog/sewellia-lineolata";
import vittinaNatalensis from "vivary/catalog/vittina-natalensis";
import { predation } from "../../../../src/compatibility/rules/pair/predation";
import type { Kind, SpeciesProfile, TraitValue as Value } from "../../../../src/species";
import { adults, adultsBySex, animal, type Stated } from "../../animals";
import { findingsOf, pairBy, planBy, weighed } from "../../judging";

type Eats = Value<"predation.eats">;

const hunter = (eats: Eats, length = 10) =>
  animal("hunter", { "predation.eats": eats, "size.adultLength": adults(length) });
const prey = (length: number, more: Stated = {}, kind: Kind = "fish") =>
  animal("prey", { "predation.eats": [], "size.adultLength": adults(length), ...more }, { kind });

/** What the hunter's side finds; the prey of these tests eats nobody. */
const eaten = (species: SpeciesProfile, by: SpeciesProfile) =>
  pairBy(predation, { species: by }, { species }).findings;
const weights = (species: SpeciesProfile, by: SpeciesProfile) =>
  eaten(species, by).map(({ weight }) => weight);

const anyFish: Eats = [{ prey: "fish" }];
const scatters: Stated = { "reproduction.mode": "scatters-eggs" };

describe("fish of a hunter that no source limits to a length", () => {
  test("are likely eaten up to a fifth of its length", () => {
    expect(weights(prey(2), hunter(anyFish))).toEqual(["blocking"]);
    expect(weights(prey(2.01), hunter(anyFish))).toEqual(["restricting"]);
    expect(eaten(prey(2), hunter(anyFish))).toMatchObject([
      {
        measures: {
          prey: { value: 2, unit: "cm" },
          hunter: { value: 10, unit: "cm" },
          share: { value: 0.2 },
        },
      },
    ]);
  });

  test("may be eaten up to 46 hundredths of its length", () => {
    expect(weights(prey(4.6, scatters), hunter(anyFish))).toEqual(["restricting"]);
    expect(weights(prey(4.61, scatters), hunter(anyFish))).toEqual([]);
  });

  test("are safe where they are deeper than its mouth takes, both lengths as the hunter would wish them", () => {
    // Standard length is 0.80 to 0.85 of total length, so 4 cm of prey is at least 3.2 deep-shares and the mouth
    // of a hunter of 10 cm takes up to 0.27 × 8.5 = 2.295 cm: the share from which it is too deep is 0.7172.
    const deep = (share: number) => prey(4, { ...scatters, "size.bodyDepthShare": share });
    expect(weights(deep(0.717), hunter(anyFish))).toEqual(["restricting"]);
    expect(weights(deep(0.718), hunter(anyFish))).toEqual([]);
    expect(weights(prey(2, { ...scatters, "size.bodyDepthShare": 1 }), hunter(anyFish))).toEqual([
      "blocking",
    ]);
  });

  test("are safe once the plan states that they are long enough", () => {
    const groups = (length?: number) => [
      { species: hunter(anyFish, 25), unsexed: 1 },
      { species: prey(9, scatters), unsexed: 1, length },
    ];
    expect(planBy(predation, groups()).findings).toMatchObject([
      { weight: "restricting", condition: { on: "group.length", of: 1, wanted: { min: 11.5 } } },
    ]);
    expect(weighed(planBy(predation, groups(11.4))).findings).toEqual(["restricting"]);
    expect(weighed(planBy(predation, groups(11.5)))).toEqual({ findings: [], met: ["restricting"] });
    expect(weighed(planBy(predation, groups(12)))).toEqual({ findings: [], met: [] });
  });
});

describe("where the prey never grows long enough", () => {
  // The longest hunter on record measures 40 cm and may take prey of 18.4 cm; the usual one of 20 cm takes 9.2 cm.
  const groups = (length?: number) => [
    {
      species: animal("hunter", { "predation.eats": anyFish, "size.adultLength": adults(20, 40) }),
      unsexed: 1,
      length,
    },
    { species: prey(12, scatters), unsexed: 1 },
  ];

  test("it works with hunters that do not grow beyond what takes it", () => {
    // 12 cm of prey are 46 hundredths of 26.1 cm.
    expect(planBy(predation, groups()).findings).toMatchObject([
      {
        weight: "restricting",
        condition: { on: "group.length", of: 0, wanted: { max: expect.closeTo(26.1, 1) } },
      },
    ]);
    expect(planBy(predation, groups(26)).findings).toEqual([]);
  });

  test("and with no hunter whose usual length is too much", () => {
    const small = { species: prey(9, scatters), unsexed: 1 };
    expect(planBy(predation, [...groups().slice(0, 1), small]).findings).toMatchObject([
      { condition: { on: "group.length", of: 1, wanted: { min: 18.4 } } },
    ]);
  });
});

test("a hunter that feeds at the surface alone does not come down to the ground", () => {
  const fromAbove = animal("hunter", {
    "predation.eats": anyFish,
    "size.adultLength": adults(20),
    "diet.reach": ["surface"],
  });
  const below = prey(3, { ...scatters, "space.zones": ["bottom"] });
  expect(weights(below, fromAbove)).toEqual([]);
  expect(weights(prey(3, { ...scatters, "space.zones": ["bottom", "midwater"] }), fromAbove)).toEqual([
    "blocking",
  ]);
});

test("46 hundredths of 10 cm are 4.6 cm: prey of that length is long enough", () => {
  const groups = [
    { species: hunter(anyFish), unsexed: 1 },
    { species: prey(3, scatters), unsexed: 1, length: 4.6 },
  ];
  expect(planBy(predation, groups).outcome).toBe("suitable");
});

describe("lengths", () => {
  test("a hunter counts at its greatest length, prey at its usual one", () => {
    const grows = animal("hunter", { "predation.eats": anyFish, "size.adultLength": adults(10, 20) });
    const grown = animal("prey", { ...scatters, "predation.eats": [], "size.adultLength": adults(4, 40) });
    expect(weights(grown, grows)).toEqual(["blocking"]);
  });

  test("each falls back on what is known", () => {
    const only = (as: "usual" | "greatest", length: number): Stated => ({
      "size.adultLength": [{ length, measure: "TL", as, total: { min: length, max: length } }],
    });
    const usual = animal("hunter", { "predation.eats": anyFish, ...only("usual", 10) });
    const greatest = animal("prey", { ...scatters, "predation.eats": [], ...only("greatest", 2) });
    expect(weights(greatest, usual)).toEqual(["blocking"]);
    expect(
      pairBy(predation, { species: usual, sex: "male" }, { species: greatest, sex: "female" }).findings,
    ).toMatchObject([{ weight: "blocking" }]);
  });

  test("prey counts at its smaller sex, unless only the larger is kept", () => {
    const dimorphic = animal("prey", {
      ...scatters,
      "predation.eats": [],
      "size.adultLength": adultsBySex(2, 5),
    });
    const found = (sex?: "male" | "female") =>
      pairBy(predation, { species: hunter(anyFish) }, { species: dimorphic, sex }).findings;
    expect(found()).toMatchObject([{ weight: "blocking" }]);
    expect(found("male")).toMatchObject([{ weight: "blocking" }]);
    expect(found("female")).toEqual([]);
  });

  test("a party's own length stands in for the record's, on either side", () => {
    const small = { species: hunter(anyFish), length: 5 };
    expect(pairBy(predation, small, { species: prey(3, scatters) }).findings).toEqual([]);
    const young = { species: prey(30, scatters), length: 2 };
    expect(pairBy(predation, { species: hunter(anyFish) }, young).findings).toMatchObject([
      { weight: "blocking" },
    ]);
  });

  test("where only standard length is known, the end that harms is adopted and the bounds try both", () => {
    const measured = animal("hunter", {
      "predation.eats": anyFish,
      "size.adultLength": [{ length: 8, measure: "SL", as: "greatest", total: { min: 8 / 0.85, max: 10 } }],
    });
    const { outcome, bounds, open } = pairBy(
      predation,
      { species: measured },
      { species: prey(4.5, scatters) },
    );
    expect(outcome).toBe("conditional");
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
    expect(open).toContainEqual(
      expect.objectContaining({ of: 0, trait: "size.adultLength", reason: "disputed" }),
    );
  });
});

describe("a stated greatest length", () => {
  const upTo = (greatest: number): Eats => [{ prey: "fish", greatest }];

  test("blocks up to it and leaves longer prey alone, whatever the hunter's length", () => {
    expect(weights(prey(4, scatters), hunter(upTo(4)))).toEqual(["blocking"]);
    expect(weights(prey(4.1, scatters), hunter(upTo(4)))).toEqual([]);
    expect(weights(prey(4.1, scatters), hunter(upTo(4), 100))).toEqual([]);
  });

  test("is the greatest of several", () => {
    const said: Eats = [
      { prey: "fish", greatest: 3 },
      { prey: "fish", greatest: 5 },
      { prey: "shrimp", greatest: 9 },
    ];
    expect(weights(prey(5, scatters), hunter(said))).toEqual(["blocking"]);
    expect(weights(prey(5.1, scatters), hunter(said))).toEqual([]);
  });

  test("holds for shrimps as well", () => {
    const shrimp = prey(2, { "reproduction.mode": "sea-larvae" }, "shrimp");
    expect(weights(shrimp, hunter([{ prey: "shrimp", greatest: 2 }]))).toEqual(["blocking"]);
    expect(weights(shrimp, hunter([{ prey: "shrimp", greatest: 1.9 }]))).toEqual([]);
  });
});

test("grown shrimps and snails of any size are eaten where no length is stated", () => {
  expect(weights(prey(9, {}, "shrimp"), hunter([{ prey: "shrimp" }], 3))).toEqual(["blocking"]);
  expect(weights(prey(9, {}, "snail"), hunter([{ prey: "snail" }], 3))).toEqual(["blocking"]);
  expect(weights(prey(9, {}, "snail"), hunter([{ prey: "shrimp" }], 3))).toEqual([]);
  expect(weights(prey(1, {}, "mussel"), hunter([{ prey: "snail" }, { prey: "shrimp" }], 30))).toEqual([]);
});

describe("young", () => {
  const fry: Eats = [{ prey: "fry" }];
  const livebearer = prey(9, { "reproduction.mode": "livebearer" });
  const forYoung = {
    weight: "restricting",
    condition: { on: "tank.cover", wanted: { min: 0.3 } },
    watchFor: "eggs or young",
  };

  test("born among fish that eat fry need cover", () => {
    expect(eaten(livebearer, hunter(fry))).toMatchObject([forYoung]);
    expect(eaten(livebearer, hunter(anyFish))).toMatchObject([forYoung]);
    expect(eaten(livebearer, hunter([{ prey: "egg" }]))).toEqual([]);
  });

  test("have a chance in a tank with enough cover", () => {
    const groups = [
      { species: hunter(fry), unsexed: 1 },
      { species: livebearer, unsexed: 3 },
    ];
    const withCover = (cover: number) => weighed(planBy(predation, groups, { tank: { cover } }));
    expect(withCover(0.3)).toEqual({ findings: [], met: ["restricting"] });
    expect(withCover(0.29)).toEqual({ findings: ["restricting"], met: [] });
  });

  test("are born as well where the plan lists the parents one by one", () => {
    const groups = [
      { species: hunter(fry), unsexed: 1 },
      { species: livebearer, males: 1 },
      { species: livebearer, females: 1 },
    ];
    expect(planBy(predation, groups, { tank: { cover: 0 } }).findings).toMatchObject([forYoung]);
  });

  test("are none of an egg-layer that needs the keeper's help, nor of males alone", () => {
    expect(eaten(prey(9, scatters), hunter(fry))).toEqual([]);
    expect(
      pairBy(predation, { species: hunter(fry) }, { species: livebearer, sex: "male" }).findings,
    ).toEqual([]);
  });

  test("may be about where nobody says how it breeds", () => {
    const { bounds, open } = pairBy(predation, { species: hunter(fry) }, { species: prey(9) });
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
    expect(open).toMatchObject([{ of: 1, trait: "reproduction.mode", reason: "missing" }]);
  });

  test("that are stocked are eaten too", () => {
    const found = pairBy(predation, { species: hunter(fry) }, { species: prey(9, scatters), stage: "fry" });
    expect(found.findings).toMatchObject([forYoung]);
  });

  test("of shrimps that hatch complete need cover, larvae that drift to sea do not", () => {
    const shrimp = (mode: Value<"reproduction.mode">) => prey(3, { "reproduction.mode": mode }, "shrimp");
    const picks = hunter([{ prey: "shrimplet" }]);
    expect(eaten(shrimp("broods-young"), picks)).toMatchObject([forYoung]);
    expect(eaten(shrimp("sea-larvae"), picks)).toEqual([]);
    expect(eaten(shrimp("broods-young"), hunter([{ prey: "fry" }]))).toEqual([]);
  });
});

test("an animal that is known to eat nobody eats nobody", () => {
  expect(weights(prey(1, { "reproduction.mode": "livebearer" }), hunter([]))).toEqual([]);
});

describe("young animals", () => {
  const small = prey(4, scatters);
  const beside = (length: number) =>
    planBy(predation, [
      { species: hunter(anyFish, 30), juveniles: 1, length },
      { species: small, unsexed: 6 },
    ]).findings;

  test("that cannot swallow their company yet will, and the finding says from which length on", () => {
    // Grown, 30 cm, prey up to a fifth of that is likely eaten; prey of 4 cm may go down from 4 / 0.46 = 8.7 cm on.
    expect(beside(5)).toMatchObject([
      {
        weight: "blocking",
        measures: {
          hunter: { value: 30 },
          today: { value: 5, unit: "cm" },
          turnsAt: { value: expect.closeTo(8.7, 1), unit: "cm" },
        },
      },
    ]);
  });

  test("that may swallow it already are no better", () => {
    expect(beside(10)).toMatchObject([{ weight: "blocking", measures: { today: { value: 10 } } }]);
    expect(beside(25)[0]).toMatchObject({ weight: "blocking", measures: { hunter: { value: 25 } } });
    expect(beside(25)[0]?.measures).not.toHaveProperty("today");
  });

  test("take no more than their length allows of what grown ones take", () => {
    const picks = hunter([{ prey: "fish", greatest: 4 }], 15);
    const found = (length: number) =>
      planBy(predation, [
        { species: picks, juveniles: 1, length },
        { species: small, unsexed: 6 },
      ]).findings;
    expect(found(6)).toMatchObject([{ weight: "blocking", measures: { today: { value: 6 } } }]);
    expect(found(15)[0]).toMatchObject({ weight: "blocking" });
  });

  test("that are eaten now may be safe once grown, and the finding says from which length on", () => {
    const growing = prey(12, scatters);
    const grownHunter = { species: hunter([{ prey: "fish", greatest: 5 }], 20), unsexed: 1 };
    const found = planBy(predation, [grownHunter, { species: growing, juveniles: 4, length: 3 }]).findings;
    expect(found).toMatchObject([{ weight: "blocking", measures: { safeFrom: { value: 5, unit: "cm" } } }]);
  });

  test("are safe later by the hunter's length where no prey length is stated", () => {
    const growing = prey(12, scatters);
    const small = { species: growing, juveniles: 4, length: 2 };
    const found = planBy(predation, [{ species: hunter(anyFish, 20), unsexed: 1 }, small]).findings;
    expect(found).toMatchObject([{ weight: "blocking", measures: { safeFrom: { value: 9.2, unit: "cm" } } }]);
  });

  test("that are eaten now and grown as well are never safe", () => {
    const groups = [
      { species: hunter([{ prey: "fish", greatest: 5 }], 20), unsexed: 1 },
      { species: prey(4, scatters), juveniles: 4, length: 2 },
    ];
    const [finding] = planBy(predation, groups).findings;
    expect(finding?.weight).toBe("blocking");
    expect(finding?.measures).not.toHaveProperty("safeFrom");
  });

  test("of both kinds are judged as they are and as they will be", () => {
    const both = (length: number) =>
      planBy(predation, [
        { species: hunter(anyFish, 30), juveniles: 1, length: 6 },
        { species: prey(20, scatters), juveniles: 5, length },
      ]).findings.map(({ weight }) => weight);
    expect(both(1)).toEqual(["blocking"]);
    expect(both(5)).toEqual([]);
  });
});

describe("what makes it worse", () => {
  test("a hunter that comes by night", () => {
    const night = animal("hunter", {
      "predation.eats": anyFish,
      "size.adultLength": adults(20),
      "diet.light": ["night"],
    });
    expect(eaten(prey(3, scatters), night)).toMatchObject([{ measures: { hunts: { value: "night" } } }]);
  });

  test("spines that choke the hunter, which are then among what it was judged by", () => {
    const armoured = prey(3, { ...scatters, "care.hazards": ["spines"] });
    expect(eaten(armoured, hunter(anyFish, 20))).toMatchObject([
      {
        measures: { defence: { value: "spines" } },
        traits: expect.arrayContaining(["care.hazards"]),
      },
    ]);
  });
});

describe("guarded eggs", () => {
  const robber = (light: Value<"diet.light">) =>
    animal("robber", {
      "predation.eats": [{ prey: "egg" }],
      "size.adultLength": adults(6),
      "diet.light": light,
    });
  const parent = prey(10, { "reproduction.mode": "guards-eggs" });

  test("are lost to those that feed at night", () => {
    expect(eaten(parent, robber(["night"]))).toMatchObject([{ weight: "advisory" }]);
    expect(eaten(parent, robber(["day"]))).toEqual([]);
    expect(eaten(prey(10, scatters), robber(["night"]))).toEqual([]);
  });

  test("are not told of its own kind", () => {
    const own = animal("own", {
      "predation.eats": [{ prey: "egg" }],
      "size.adultLength": adults(6),
      "diet.light": ["night"],
      "reproduction.mode": "guards-eggs",
    });
    expect(pairBy(predation, { species: own }, { species: own }).findings).toEqual([]);
  });

  test("are laid by a pair only", () => {
    const alone = pairBy(predation, { species: robber(["night"]) }, { species: parent, count: 1 });
    expect(alone.findings).toEqual([]);
    const single = pairBy(predation, { species: robber(["night"]) }, { species: parent, sex: "male" });
    expect(single.findings).toEqual([]);
  });
});

describe("in a keeper's tank", () => {
  const byPredation = (a: SpeciesProfile, b: SpeciesProfile) =>
    findingsOf(pairBy(predation, { species: a }, { species: b }), "predation");

  test("an oscar eats a neon", () => {
    expect(byPredation(astronotusOcellatus, paracheirodonInnesi)).toMatchObject([
      { weight: "blocking", from: 0, to: 1 },
    ]);
    expect(byPredation(paracheirodonInnesi, astronotusOcellatus)).toMatchObject([
      { weight: "blocking", from: 1, to: 0 },
    ]);
  });

  test("an oscar eats a guppy, a cory and a shrimp", () => {
    for (const species of [poeciliaReticulata, osteogasterAenea, neocaridinaDavidi]) {
      expect(byPredation(astronotusOcellatus, species)[0]?.weight).toBe("blocking");
    }
  });

  test("an angelfish eats a neon, though not a cory, which feeds on its eggs at night", () => {
    expect(byPredation(pterophyllumScalare, paracheirodonInnesi)[0]?.weight).toBe("blocking");
    expect(byPredation(pterophyllumScalare, osteogasterAenea)).toMatchObject([
      { from: 1, to: 0, weight: "advisory", measures: { of: { value: "egg" } } },
    ]);
  });

  test("a goldfish eats what fits into its mouth: shrimps, not other goldfish", () => {
    expect(byPredation(carassiusAuratus, neocaridinaDavidi)[0]?.weight).toBe("blocking");
    expect(byPredation(carassiusAuratus, carassiusAuratus)).toEqual([]);
  });

  test("a neon leaves grown cherry shrimps alone and eats their young", () => {
    expect(byPredation(paracheirodonInnesi, neocaridinaDavidi)).toMatchObject([
      { weight: "restricting", condition: { on: "tank.cover" } },
    ]);
    expect(byPredation(paracheirodonInnesi, caridinaMultidentata)).toEqual([]);
  });

  test("a guppy's fry are eaten by a betta and not by a hillstream loach", () => {
    expect(byPredation(bettaSplendens, poeciliaReticulata)).toMatchObject([{ weight: "restricting" }]);
    expect(byPredation(sewelliaLineolata, poeciliaReticulata)).toEqual([]);
  });

  test("nobody here eats a snail but those that are known to", () => {
    expect(byPredation(paracheirodonInnesi, vittinaNatalensis)).toEqual([]);
    expect(byPredation(astronotusOcellatus, vittinaNatalensis)[0]?.weight).toBe("blocking");
  });
});
