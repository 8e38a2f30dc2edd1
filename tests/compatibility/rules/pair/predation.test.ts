import { describe, expect, test } from "vitest";
import ambastaiaSidthimunki from "vivary/catalog/ambastaia-sidthimunki";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import bettaSplendens from "vivary/catalog/betta-splendens";
import botiaStriata from "vivary/catalog/botia-striata";
import cambarellusPatzcuarensis from "vivary/catalog/cambarellus-patzcuarensis";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import caridinaMultidentata from "vivary/catalog/caridina-multidentata";
import gymnocorymbusTernetzi from "vivary/catalog/gymnocorymbus-ternetzi";
import macrognathusSiamensis from "vivary/catalog/macrognathus-siamensis";
import megalamphodusEques from "vivary/catalog/megalamphodus-eques";
import neocaridinaDavidi from "vivary/catalog/neocaridina-davidi";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import otocinclusVittatus from "vivary/catalog/otocinclus-vittatus";
import paracheirodonAxelrodi from "vivary/catalog/paracheirodon-axelrodi";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import procambarusVirginalis from "vivary/catalog/procambarus-virginalis";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import sewelliaLineolata from "vivary/catalog/sewellia-lineolata";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import vittinaNatalensis from "vivary/catalog/vittina-natalensis";
import { predation } from "../../../../src/compatibility/rules/pair/predation";
import type { Party } from "../../../../src/plan";
import type { Kind, SpeciesProfile, TraitValue as Value, Zone } from "../../../../src/species";
import { adults, adultsBySex, animal, type Stated } from "../../animals";
import { findingsOf, pairBy, planBy, weighed } from "../../judging";

type Eats = Value<"predation.eats">;

const hunter = (eats: Eats, length = 10, more: Stated = {}) =>
  animal("hunter", { "predation.eats": eats, "size.adultLength": adults(length), ...more });
const prey = (length: number, more: Stated = {}, kind: Kind = "fish") =>
  animal(
    "prey",
    {
      "predation.eats": [],
      "size.adultLength": adults(length),
      "size.bodyShape": "fusiform",
      "reproduction.mode": "scatters-eggs",
      ...more,
    },
    { kind },
  );

/** What the hunter's side finds; the prey of these tests eats nobody. */
const eaten = (species: SpeciesProfile, by: SpeciesProfile, party: Omit<Party, "species"> = {}) =>
  pairBy(predation, { species: by }, { species, ...party }).findings;

/** A weight, or what could become of it: nobody can tell in advance. */
const fates = (...given: Parameters<typeof eaten>) =>
  eaten(...given).map((finding) => ("couldBe" in finding ? "may try" : finding.weight));

const anyFish: Eats = [{ prey: "fish" }];
const upTo = (greatest: number): Eats => [{ prey: "fish", greatest }];

describe("fish of a hunter that no source limits to a length", () => {
  test("are eaten up to a fifth of its length", () => {
    expect(fates(prey(2), hunter(anyFish))).toEqual(["blocking"]);
    expect(eaten(prey(2), hunter(anyFish))).toMatchObject([
      {
        measures: {
          prey: { value: 2, unit: "cm" },
          hunter: { value: 10, unit: "cm" },
          share: { value: 0.2 },
        },
        watchFor: "missing-animals",
      },
    ]);
  });

  test("may be tried up to 46 hundredths of it, which nobody can tell in advance", () => {
    expect(fates(prey(2.1), hunter(anyFish))).toEqual(["may try"]);
    expect(fates(prey(4.6), hunter(anyFish))).toEqual(["may try"]);
    expect(fates(prey(4.61), hunter(anyFish))).toEqual([]);
    const { outcome, bounds, open } = pairBy(
      predation,
      { species: hunter(anyFish) },
      { species: prey(3, { "care.hazards": [], "space.zones": ["midwater"] }) },
    );
    expect(outcome).toBe("undetermined");
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
    expect(open).toContainEqual({ rule: "predation", of: 0, reason: "individual", couldBe: "blocking" });
  });

  test("may be tried with spines, and from another part of the water", () => {
    const below = hunter(anyFish, 10, { "space.zones": ["bottom"] });
    expect(fates(prey(4, { "care.hazards": ["spines"] }), hunter(anyFish))).toEqual(["may try"]);
    expect(fates(prey(4, { "space.zones": ["surface"] }), below)).toEqual(["may try"]);
  });

  test("are safe where they are deeper than its mouth takes, both lengths as the hunter would wish them", () => {
    // Standard length is 0.80 to 0.85 of total length, so 4 cm of prey is at least 3.2 deep-shares and the mouth
    // of a hunter of 10 cm takes up to 0.27 × 8.5 = 2.295 cm: the share from which it is too deep is 0.7172.
    const deep = (share: number) => prey(4, { "size.bodyDepthShare": share });
    expect(fates(deep(0.717), hunter(anyFish))).toEqual(["may try"]);
    expect(fates(deep(0.718), hunter(anyFish))).toEqual([]);
    expect(fates(prey(2, { "size.bodyDepthShare": 1 }), hunter(anyFish))).toEqual(["blocking"]);
  });
});

describe("a stated greatest prey", () => {
  const here: Stated = { "space.zones": ["midwater"] };

  test("blocks up to it, and above it by a quarter the hunter may try", () => {
    expect(fates(prey(4), hunter(upTo(4)))).toEqual(["blocking"]);
    expect(fates(prey(4.1), hunter(upTo(4)))).toEqual(["may try"]);
    expect(fates(prey(5), hunter(upTo(4)))).toEqual(["may try"]);
    expect(fates(prey(5.1), hunter(upTo(4)))).toEqual([]);
  });

  test("decides whatever the hunter's length", () => {
    expect(fates(prey(5.1), hunter(upTo(4), 100))).toEqual([]);
    expect(fates(prey(4), hunter(upTo(4), 5))).toEqual(["blocking"]);
  });

  test("holds for prey with spines as well, which bass attack as often and take into the mouth", () => {
    // Bosher, Newton and Fine 2006, Ethology 112, 188-195, abstract: of channel catfish with their spines and without, as many were
    // attacked first; those with spines were let go and attacked again.
    const armoured = (length: number) => prey(length, { "care.hazards": ["spines"] });
    expect(fates(armoured(4), hunter(upTo(4)))).toEqual(["blocking"]);
    expect(fates(armoured(4.1), hunter(upTo(4)))).toEqual(["may try"]);
    expect(fates(armoured(5.1), hunter(upTo(4)))).toEqual([]);
  });

  test("has nothing above it for prey that lives elsewhere; who says nothing of its place lives here", () => {
    const byDay: Stated = { "diet.light": ["day"] };
    const there = hunter(upTo(4), 10, { "space.zones": ["bottom"], ...byDay });
    expect(fates(prey(4.5, here), there)).toEqual([]);
    expect(fates(prey(4.5), there)).toEqual(["may try"]);
    const above = hunter(upTo(4), 10, { "space.zones": ["surface"], ...byDay });
    const feeding = (reach: Value<"diet.reach">) => prey(4.5, { ...here, "diet.reach": reach });
    expect(fates(feeding(["midwater"]), above)).toEqual([]);
    expect(fates(feeding(["surface"]), above)).toEqual(["may try"]);
    expect(fates(feeding(["bottom"]), there)).toEqual([]);
    expect(fates(prey(4, here), there)).toEqual(["blocking"]);
  });

  test("by night is tried where prey sleeps in the next part of the water, in a keeper's tank by a spiny eel", () => {
    const fate = (mine: Value<"diet.light">, theirs: Value<"diet.light">, zones: readonly Zone[]) =>
      fates(
        prey(4.5, { "space.zones": zones, "diet.light": theirs }),
        hunter(upTo(4), 10, { "space.zones": ["bottom"], "diet.light": mine }),
      );
    expect(fate(["night"], ["day"], ["midwater"])).toEqual(["may try"]);
    expect(fate(["night"], ["day"], ["surface"])).toEqual([]);
    expect(fate(["night"], ["night"], ["midwater"])).toEqual([]);
    expect(fate(["day"], ["day"], ["midwater"])).toEqual([]);
    const eel = pairBy(predation, { species: macrognathusSiamensis }, { species: paracheirodonAxelrodi });
    expect(eel.outcome).toBe("undetermined");
  });

  test("of shrimps is tried at any height, for they sit on leaves and panes; of fish where it lives", () => {
    const said: Eats = [
      { prey: "fish", greatest: 2 },
      { prey: "shrimp", greatest: 2 },
    ];
    const above = hunter(said, 4, {
      "space.zones": ["midwater"],
      "diet.reach": ["midwater", "bottom"],
      "diet.light": ["day"],
    });
    const below: Stated = { "space.zones": ["bottom"], "diet.reach": ["bottom"] };
    expect(fates(prey(2.3, below, "shrimp"), above)).toEqual(["may try"]);
    expect(fates(prey(2.3, below), above)).toEqual([]);
    expect(
      fates(
        prey(2.3, below, "shrimp"),
        hunter(said, 4, { "space.zones": ["midwater"], "diet.reach": ["midwater"] }),
      ),
    ).toEqual(["may try"]);
    for (const species of [megalamphodusEques, gymnocorymbusTernetzi]) {
      const { outcome } = pairBy(predation, { species }, { species: neocaridinaDavidi });
      expect(outcome).toBe("undetermined");
    }
  });

  test("is the greatest of several, whether or not another source names no length", () => {
    const said: Eats = [
      { prey: "fish", greatest: 3 },
      { prey: "fish", greatest: 5 },
      { prey: "shrimp", greatest: 9 },
    ];
    expect(fates(prey(5), hunter(said))).toEqual(["blocking"]);
    expect(fates(prey(6.3), hunter(said))).toEqual([]);
    expect(fates(prey(6.3), hunter([...said, { prey: "fish" }], 20))).toEqual([]);
  });

  test("holds for shrimps as well", () => {
    const shrimp = prey(2, { "reproduction.mode": "sea-larvae" }, "shrimp");
    expect(fates(shrimp, hunter([{ prey: "shrimp", greatest: 2 }]))).toEqual(["blocking"]);
    expect(fates(shrimp, hunter([{ prey: "shrimp", greatest: 1.9 }]))).toEqual(["may try"]);
    expect(fates(shrimp, hunter([{ prey: "shrimp", greatest: 1.5 }]))).toEqual([]);
  });
});

describe("prey like an eel", () => {
  const eel = (length: number, more: Stated = {}) => prey(length, { "size.bodyShape": "eel-like", ...more });

  test("goes down up to twice the figure, and is tried no longer than others are", () => {
    expect(fates(eel(8), hunter(upTo(4)))).toEqual(["blocking"]);
    expect(fates(eel(8.1), hunter(upTo(4)))).toEqual([]);
    expect(fates(eel(4), hunter(anyFish))).toEqual(["blocking"]);
    expect(fates(eel(4.5), hunter(anyFish))).toEqual(["may try"]);
    expect(fates(eel(4.7), hunter(anyFish))).toEqual([]);
  });

  test("enters longer than twice the figure", () => {
    expect(eaten(eel(12), hunter(upTo(4)), { length: 6 })).toMatchObject([
      { weight: "restricting", condition: { on: "group.length", wanted: { min: 8.1 } } },
    ]);
  });

  test("is what nobody said of a fish, never a shrimp", () => {
    const { size, ...rest } = prey(8);
    const unknown = { ...rest, size: { adultLength: size?.adultLength } } as SpeciesProfile;
    expect(fates(unknown, hunter(upTo(4)))).toEqual(["blocking"]);
    const shrimp = animal(
      "prey",
      { "size.adultLength": adults(3.5), "reproduction.mode": "sea-larvae" },
      { kind: "shrimp" },
    );
    expect(fates(shrimp, hunter([{ prey: "shrimp", greatest: 2 }]))).toEqual([]);
  });
});

describe("a hunter that feeds at the surface alone", () => {
  const fromAbove = hunter(anyFish, 20, { "diet.reach": ["surface"] });

  test("does not come down to what never leaves the ground", () => {
    expect(fates(prey(3, { "space.zones": ["bottom"] }), fromAbove)).toEqual([]);
  });

  test("takes what comes up", () => {
    expect(fates(prey(3, { "space.zones": ["bottom", "midwater"] }), fromAbove)).toEqual(["blocking"]);
    expect(fates(prey(3), fromAbove)).toEqual(["blocking"]);
  });
});

describe("lengths", () => {
  test("count at what is usual, of hunter and prey alike", () => {
    const grows = animal("hunter", { "predation.eats": anyFish, "size.adultLength": adults(10, 40) });
    const grown = prey(4, { "size.adultLength": adults(4.7, 40) });
    expect(fates(grown, grows)).toEqual([]);
  });

  test("fall back on what is known", () => {
    const only = (as: "usual" | "greatest", length: number): Stated => ({
      "size.adultLength": [{ length, measure: "TL", as, total: { min: length, max: length } }],
    });
    const byGreatest = animal("hunter", { "predation.eats": anyFish, ...only("greatest", 10) });
    expect(fates(prey(2, only("greatest", 2)), byGreatest)).toEqual(["blocking"]);
  });

  test("of the hunter are those of its larger sex, of the prey those of its smaller one that is kept", () => {
    const dimorphic = prey(2, { "size.adultLength": adultsBySex(2, 5) });
    expect(fates(dimorphic, hunter(anyFish), { sex: "male" })).toEqual(["blocking"]);
    expect(fates(dimorphic, hunter(anyFish), { sex: "female" })).toEqual([]);
    const largeFemale = hunter(anyFish, 5, { "size.adultLength": adultsBySex(5, 20) });
    expect(fates(prey(4), largeFemale)).toEqual(["blocking"]);
  });

  test("of prey of which one sex alone is eaten are asked for, where the plan leaves the sex open", () => {
    const dimorphic = prey(4, { "size.adultLength": adultsBySex(6, 4) });
    const kept = (group: object, greatest: number) =>
      planBy(predation, [
        { species: hunter(upTo(greatest), 20), unsexed: 1 },
        { species: dimorphic, ...group },
      ]).findings.map((finding) => ("condition" in finding ? finding.condition : finding.weight));
    const longer = { on: "group.length", of: 1, wanted: { min: 5.1 } };
    expect(kept({ unsexed: 6 }, 4)).toMatchObject([longer]);
    expect(kept({ males: 2, unsexed: 4 }, 4)).toMatchObject([longer]);
    expect(kept({ males: 6, length: 3 }, 4)).toMatchObject([longer]);
    expect(kept({ males: 2, females: 4 }, 4)).toEqual(["blocking"]);
    expect(kept({ females: 2, unsexed: 4 }, 4)).toEqual(["blocking"]);
    expect(kept({ unsexed: 6 }, 5)).toEqual(["blocking"]);
    expect(kept({ unsexed: 6 }, 3.5)).toEqual(["advisory"]);
  });

  test("whose females are the larger ask for these, and for a length where one is stated", () => {
    const dimorphic = prey(4, { "size.adultLength": adultsBySex(4, 6) });
    const kept = (group: object) =>
      planBy(predation, [
        { species: hunter(upTo(4), 20), unsexed: 1 },
        { species: dimorphic, ...group },
      ]).conditions;
    const females = { on: "group.sex", of: 1, wanted: { oneOf: ["female"] } };
    expect(kept({ unsexed: 6 })).toMatchObject([females]);
    expect(kept({ females: 2, unsexed: 4 })).toMatchObject([females]);
    expect(kept({ unsexed: 6, length: 3 })).toMatchObject([{ on: "group.length", wanted: { min: 5.1 } }]);
    expect(kept({ females: 6 })).toEqual([]);
  });

  test("asked for are those that its larger sex surely reaches", () => {
    const long = { length: 5, measure: "SL", as: "usual", total: { min: 4.9, max: 6.3 } } as const;
    expect(fates(prey(4, { "size.adultLength": [long] }), hunter(upTo(4.9), 20))).toEqual(["blocking"]);
  });

  test("of a young hunter are those it grows to, however small it is today", () => {
    const today = { species: hunter(anyFish, 20), length: 3, stage: "juvenile" } as const;
    expect(pairBy(predation, today, { species: prey(4) }).findings).toMatchObject([{ weight: "blocking" }]);
    const giant = { species: hunter(anyFish, 10), length: 20 };
    expect(pairBy(predation, giant, { species: prey(4) }).findings).toMatchObject([{ weight: "blocking" }]);
  });

  test("known as standard length only: the end that harms is adopted and the bounds try both", () => {
    const measured = hunter(anyFish, 10, {
      "size.adultLength": [{ length: 8, measure: "SL", as: "greatest", total: { min: 8 / 0.85, max: 10 } }],
    });
    const { outcome, bounds, open } = pairBy(predation, { species: measured }, { species: prey(4.5) });
    expect(outcome).toBe("undetermined");
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
    expect(open).toContainEqual(
      expect.objectContaining({ of: 0, trait: "size.adultLength", reason: "disputed" }),
    );
  });
});

describe("prey that is shorter than its adults, which would be safe", () => {
  const growing = prey(12);
  const among = (length?: number, eats: Eats = upTo(4)) =>
    planBy(predation, [
      { species: hunter(eats, 15), unsexed: 1 },
      { species: growing, juveniles: 6, length },
    ]);

  test("enters grown: longer than the hunter may try", () => {
    expect(among(3).findings).toMatchObject([
      {
        weight: "restricting",
        measures: { prey: { value: 3 }, safeFrom: { value: 5.1, unit: "cm" } },
        condition: { on: "group.length", of: 1, wanted: { min: 5.1 } },
      },
    ]);
  });

  test("restricts anywhere in the band too, where a grown one would leave it open", () => {
    expect(weighed(among(4.5)).findings).toEqual(["restricting"]);
    expect(weighed(among(5)).findings).toEqual(["restricting"]);
    expect(weighed(among(5.1))).toEqual({ findings: [], met: [] });
  });

  test("is as short as can be where no length is stated, at whatever stage", () => {
    expect(weighed(among()).findings).toEqual(["restricting"]);
    expect(eaten(growing, hunter(upTo(4)), { stage: "juvenile" })).toMatchObject([
      { weight: "restricting", condition: { on: "group.length", of: 1, wanted: { min: 5.1 } } },
    ]);
    expect(eaten(growing, hunter(upTo(4)), { length: 3 })).toMatchObject([{ weight: "restricting" }]);
  });

  test("is told at once what becomes of its young, where these are wanted", () => {
    const parent = prey(8, { "reproduction.mode": "guards-eggs" });
    const robber = hunter([...upTo(4), { prey: "egg" }], 10, { "diet.light": ["night"] });
    const small = { species: parent, unsexed: 6, length: 2 };
    const found = (more: { readonly raises?: boolean }) =>
      planBy(predation, [
        { species: robber, unsexed: 1 },
        { ...small, ...more },
      ]).findings;
    expect(found({})).toMatchObject([{ weight: "restricting", condition: { on: "group.length" } }]);
    expect(found({ raises: true })).toMatchObject([
      { weight: "restricting", condition: { on: "group.length" } },
      { weight: "restricting", condition: { on: "tank.cover" } },
      { weight: "advisory", couldBe: "blocking" },
    ]);
  });

  test("is not eaten by its own kind, which is hardly longer and grows up with it", () => {
    const species = prey(8, { "predation.eats": upTo(4) });
    const two = (one?: number, other?: number) =>
      planBy(predation, [
        { species, juveniles: 4, length: one },
        { species, juveniles: 4, length: other },
      ]).findings.map((finding) => ("condition" in finding ? finding.condition.wanted : finding.weight));
    expect(planBy(predation, [{ species, juveniles: 8, length: 2 }]).findings).toEqual([]);
    expect(two(2, 2)).toEqual([]);
    expect(two(3, 2)).toEqual([]);
    expect(two()).toEqual([]);
    // At 4 cm half of what it takes once grown: 2 cm surely, 2.5 cm perhaps.
    expect(two(4, 2)).toMatchObject([{ min: 2.6 }]);
    expect(two(8, 2)).toMatchObject([{ min: 5.1 }]);
    expect(two(undefined, 3)).toMatchObject([{ min: 5.1 }, { min: 1.9 }]);
  });

  test("that only the females would eat that will join males has these stay alone", () => {
    const lengths: Stated["size.adultLength"] = [
      { length: 4, measure: "TL", as: "usual", sex: "male", total: { min: 4, max: 4 } },
      { length: 12, measure: "TL", as: "usual", sex: "female", total: { min: 12, max: 12 } },
    ];
    const eater = (least: number) =>
      hunter(anyFish, 12, {
        "size.adultLength": lengths,
        "social.living": "group",
        "social.group": { least },
        "social.femalesPerMale": 0,
      });
    const males = (least: number) =>
      planBy(predation, [
        { species: eater(least), males: 3 },
        { species: prey(2), unsexed: 6 },
      ]);
    const stayMales = { on: "group.sex", of: 0, wanted: { oneOf: ["male"] } };
    expect(males(6)).toMatchObject({ outcome: "suitable", met: [{ from: 0, to: 1, condition: stayMales }] });
    expect(males(3)).toMatchObject({ outcome: "suitable", met: [] });
  });

  test("is not eaten by an equal of its own kind, however large the prey that these take", () => {
    const species = prey(20, { "predation.eats": upTo(20) });
    const asked = (one: number, other: number) =>
      planBy(predation, [
        { species, unsexed: 4, length: one },
        { species, unsexed: 4, length: other },
      ]).conditions.map(({ of, wanted }) => ({ of, wanted }));
    expect(asked(7, 7)).toEqual([]);
    expect(asked(7, 3)).toEqual([{ of: 1, wanted: { min: 7, unit: "cm" } }]);
    expect(asked(20, 20)).toEqual([]);
  });

  test("of no stated length never blocks for that: where grown ones may be tried, so may these", () => {
    const juveniles = (length?: number) =>
      eaten(prey(4.5), hunter(upTo(4)), { stage: "juvenile", length }).map((finding) =>
        "couldBe" in finding ? "may try" : finding.weight,
      );
    expect(juveniles()).toEqual(["may try"]);
    expect(juveniles(3)).toEqual(["blocking"]);
    expect(fates(prey(4), hunter(upTo(4)), { stage: "juvenile" })).toEqual(["blocking"]);
    expect(fates(prey(4.5), hunter(upTo(4)), { stage: "fry" })).toEqual(["blocking"]);
  });

  test("by the hunter's length where no prey is stated, and never past its own usual length", () => {
    expect(among(3, anyFish).findings).toMatchObject([{ condition: { wanted: { min: 7 } } }]);
    const deep = prey(5, { "size.bodyDepthShare": 0.9 });
    expect(eaten(deep, hunter(anyFish, 15), { length: 2 })).toMatchObject([
      { condition: { wanted: { min: 5 } } },
    ]);
  });

  test("is eaten where its adults are no better off", () => {
    expect(fates(prey(4), hunter(upTo(4)), { length: 2 })).toEqual(["blocking"]);
    expect(fates(prey(4.5), hunter(upTo(4)), { length: 2 })).toEqual(["blocking"]);
    expect(fates(prey(4.5), hunter(upTo(4)), { length: 4.2 })).toEqual(["may try"]);
  });

  test("is told past the band, which its spines do not close", () => {
    const armoured = prey(12, { "care.hazards": ["spines"] });
    expect(eaten(armoured, hunter(upTo(4)), { length: 3 })).toMatchObject([
      { weight: "restricting", condition: { wanted: { min: 5.1 } } },
    ]);
    expect(eaten(armoured, hunter(upTo(4)), { length: 4.5 })).toMatchObject([
      { weight: "restricting", condition: { wanted: { min: 5.1 } } },
    ]);
    const justLonger = prey(4.5, { "care.hazards": ["spines"] });
    expect(fates(justLonger, hunter(upTo(4)), { length: 3 })).toEqual(["blocking"]);
  });
});

describe("shrimps, snails and all else", () => {
  const shrimps: Eats = [{ prey: "shrimp" }];

  test("of any size are eaten where no length is stated", () => {
    expect(fates(prey(9, {}, "shrimp"), hunter(shrimps, 3))).toEqual(["blocking"]);
    expect(fates(prey(9, {}, "snail"), hunter([{ prey: "snail" }], 3))).toEqual(["blocking"]);
    expect(fates(prey(9, {}, "snail"), hunter(shrimps, 3))).toEqual([]);
  });

  test("snails past the figure are picked at by a fish that takes them too large to be swallowed, and by no other", () => {
    const large = prey(6, {}, "snail");
    const cracks = hunter([{ prey: "snail", greatest: 2.1 }], 10);
    expect(fates(large, cracks)).toEqual(["may try"]);
    expect(fates(large, hunter([{ prey: "snail", greatest: 2 }], 10))).toEqual([]);
    expect(fates(prey(6), hunter([{ prey: "fish", greatest: 2.1 }], 10))).toEqual([]);
  });

  test("count as their nearest kin: who takes shrimps takes crayfish and crabs, who takes fish takes frogs", () => {
    expect(fates(prey(3, {}, "crayfish"), hunter([{ prey: "shrimp", greatest: 4 }]))).toEqual(["blocking"]);
    expect(fates(prey(3, {}, "crab"), hunter([{ prey: "shrimp", greatest: 4 }]))).toEqual(["blocking"]);
    expect(fates(prey(3, {}, "frog"), hunter(upTo(4)))).toEqual(["blocking"]);
    const crayfishToo: Eats = [
      { prey: "shrimp", greatest: 9 },
      { prey: "crayfish", greatest: 2 },
    ];
    expect(fates(prey(3, {}, "crayfish"), hunter(crayfishToo))).toEqual([]);
  });

  test("a mussel is nobody's that does not eat mussels", () => {
    expect(fates(prey(1, {}, "mussel"), hunter([{ prey: "snail" }, ...shrimps], 30))).toEqual([]);
    expect(fates(prey(1, {}, "mussel"), hunter([{ prey: "mussel" }], 30))).toEqual(["blocking"]);
  });
});

describe("crayfish and crabs", () => {
  const clawed = (kind: Kind, eats: Eats = anyFish) =>
    animal(
      "hunter",
      { "predation.eats": eats, "size.adultLength": adults(10), "space.zones": ["bottom"] },
      { kind },
    );
  const resting: Stated = { "space.zones": ["bottom"] };
  const swimming: Stated = { "space.zones": ["midwater"] };

  test("seize what rests beside them, up to half their length, and nothing longer", () => {
    for (const kind of ["crayfish", "crab"] as const) {
      expect(fates(prey(5, resting), clawed(kind))).toEqual(["blocking"]);
      expect(fates(prey(5.1, resting), clawed(kind))).toEqual([]);
    }
  });

  test("may catch a swimmer of that length asleep, which nobody can tell in advance", () => {
    expect(fates(prey(5, swimming), clawed("crayfish"))).toEqual(["may try"]);
    expect(fates(prey(5.1, swimming), clawed("crayfish"))).toEqual([]);
    expect(fates(prey(5, { ...swimming, "care.hazards": ["spines"] }), clawed("crayfish"))).toEqual([
      "may try",
    ]);
  });

  test("leave alone what they do not eat", () => {
    expect(fates(prey(2, resting), clawed("crayfish", [{ prey: "snail" }]))).toEqual([]);
  });

  test("in a keeper's tank: a marbled crayfish takes cherry shrimps and may take a neon", () => {
    const by = { species: procambarusVirginalis };
    const beside = (species: SpeciesProfile) =>
      findingsOf(pairBy(predation, by, { species }), "predation").filter(({ from }) => from === 0);
    expect(beside(neocaridinaDavidi)).toMatchObject([{ weight: "blocking" }]);
    expect(beside(paracheirodonInnesi)).toMatchObject([{ weight: "advisory", couldBe: "blocking" }]);
    expect(beside(pterophyllumScalare)).toMatchObject([{ measures: { of: { value: "egg" } } }]);
  });
});

describe("young of which the plan is made", () => {
  const fry: Eats = [{ prey: "fry" }];
  const picks: Eats = [{ prey: "shrimplet" }];
  const shrimp = prey(3, { "reproduction.mode": "sea-larvae" }, "shrimp");

  test("shrimps of 0.8 cm are taken by who takes shrimplets, those of 1.2 cm no more", () => {
    expect(eaten(shrimp, hunter(picks, 6), { length: 0.8 })).toMatchObject([
      { weight: "restricting", condition: { on: "group.length", of: 1, wanted: { min: 1.1 } } },
    ]);
    expect(eaten(shrimp, hunter(picks, 6), { length: 1 })).toHaveLength(1);
    expect(eaten(shrimp, hunter(picks, 6), { length: 1.2 })).toEqual([]);
    expect(eaten(shrimp, hunter(picks, 6))).toEqual([]);
  });

  test("the stage is only a word: juveniles of no length are as small as can be", () => {
    expect(eaten(shrimp, hunter(picks, 6), { length: 0.8, stage: "juvenile" })).toHaveLength(1);
    expect(eaten(shrimp, hunter(picks, 6), { stage: "juvenile" })).toHaveLength(1);
    expect(eaten(shrimp, hunter(picks, 6), { length: 1.2, stage: "juvenile" })).toEqual([]);
  });

  test("are out of reach of a mouth too small: a fifth of the hunter, where no length is stated", () => {
    // 0.2 × 4 cm = 0.8 cm.
    expect(eaten(shrimp, hunter(picks, 4), { length: 0.8 })).toHaveLength(1);
    expect(eaten(shrimp, hunter(picks, 4), { length: 0.9 })).toEqual([]);
    expect(eaten(shrimp, hunter([{ prey: "shrimplet", greatest: 1.5 }], 4), { length: 1.4 })).toHaveLength(1);
  });

  test("fish count as fry up to 1.5 cm, snails as newly hatched up to 0.5 cm", () => {
    expect(eaten(prey(4), hunter(fry), { length: 1.5 })).toMatchObject([
      { condition: { on: "group.length", wanted: { min: 1.6 } } },
    ]);
    expect(eaten(prey(4), hunter(fry), { length: 1.6 })).toEqual([]);
    const snail = prey(3, {}, "snail");
    expect(eaten(snail, hunter([{ prey: "young-snail" }]), { length: 0.5 })).toHaveLength(1);
    expect(eaten(snail, hunter([{ prey: "young-snail" }]), { length: 0.6 })).toEqual([]);
  });

  test("of fish that stay as small when grown nobody can tell, and young ones are no safer", () => {
    const tiny = prey(1.5);
    expect(fates(tiny, hunter(fry))).toEqual(["may try"]);
    expect(fates(tiny, hunter(fry), { length: 1 })).toEqual(["may try"]);
    expect(fates(tiny, hunter(fry, 7))).toEqual([]);
    expect(fates(prey(1.6), hunter(fry))).toEqual([]);
    expect(
      fates(prey(1.4), hunter([{ prey: "fry" }, { prey: "fish", greatest: 1 }]), { length: 0.8 }),
    ).toEqual(["blocking"]);
  });

  test("are taken as fry though grown ones of their kind are taken to a lesser length only", () => {
    const both: Eats = [{ prey: "fry" }, { prey: "fish", greatest: 0.5 }];
    expect(eaten(prey(4), hunter(both), { length: 1.4 })).toMatchObject([
      { weight: "restricting", condition: { wanted: { min: 1.6 } } },
    ]);
    expect(eaten(prey(4), hunter(both), { length: 0.4 })).toMatchObject([
      { weight: "restricting", condition: { wanted: { min: 1.6 } } },
    ]);
  });

  test("in a keeper's tank: a honey gourami beside cherry shrimps of 0.8 and of 1.2 cm", () => {
    const beside = (length: number) =>
      planBy(predation, [
        { species: trichogasterChuna, males: 1, females: 1 },
        { species: neocaridinaDavidi, juveniles: 10, length },
      ]).findings;
    expect(beside(0.8)).toMatchObject([{ weight: "restricting", condition: { on: "group.length", of: 1 } }]);
    expect(beside(1.2)).toEqual([]);
  });
});

describe("young that are born among the others", () => {
  const fry: Eats = [{ prey: "fry" }];
  const livebearer = prey(9, { "reproduction.mode": "livebearer" });
  const lost = { weight: "advisory", watchFor: "missing-young", measures: { of: { value: "fry" } } };

  test("are a loss that keepers accept, of livebearers beside who eats fry", () => {
    expect(eaten(livebearer, hunter(fry))).toMatchObject([lost]);
    expect(eaten(livebearer, hunter(anyFish))).toMatchObject([lost]);
    expect(eaten(livebearer, hunter([{ prey: "egg" }]))).toEqual([]);
    expect(pairBy(predation, { species: hunter(fry) }, { species: livebearer }).outcome).toBe("suitable");
  });

  describe("and are wanted", () => {
    const wanting = (cover?: number, species = livebearer) =>
      planBy(
        predation,
        [
          { species: hunter(fry), unsexed: 1 },
          { species, males: 1, females: 2, raises: true },
        ],
        { tank: { cover } },
      );

    test("need cover", () => {
      expect(wanting().findings).toMatchObject([
        { weight: "restricting", condition: { on: "tank.cover", wanted: { min: 0.3 } } },
      ]);
      expect(weighed(wanting(0.3))).toEqual({ findings: [], met: ["restricting"] });
      expect(weighed(wanting(0.29))).toEqual({ findings: ["restricting"], met: [] });
    });

    test("need it as well where they hatch from eggs", () => {
      expect(weighed(wanting(0, prey(9))).findings).toEqual(["restricting"]);
    });
  });

  test("are born as well where the plan lists the parents one by one", () => {
    const groups = [
      { species: hunter(fry), unsexed: 1 },
      { species: livebearer, males: 1 },
      { species: livebearer, females: 1 },
    ];
    expect(planBy(predation, groups).findings).toMatchObject([lost]);
  });

  test("are none of an egg-layer by itself, of males alone, of a single animal", () => {
    expect(eaten(prey(9), hunter(fry))).toEqual([]);
    expect(eaten(livebearer, hunter(fry), { sex: "male" })).toEqual([]);
    expect(eaten(livebearer, hunter(fry), { count: 1 })).toEqual([]);
  });

  test("of shrimps hatch complete, or drift to sea as larvae", () => {
    const shrimp = (mode: Value<"reproduction.mode">) => prey(3, { "reproduction.mode": mode }, "shrimp");
    const picks = hunter([{ prey: "shrimplet" }]);
    expect(eaten(shrimp("broods-young"), picks)).toMatchObject([
      { weight: "advisory", measures: { of: { value: "shrimplet" } } },
    ]);
    expect(eaten(shrimp("sea-larvae"), picks)).toEqual([]);
    expect(eaten(shrimp("broods-young"), hunter(fry))).toEqual([]);
  });
});

test("an animal that is known to eat nobody eats nobody", () => {
  expect(fates(prey(1, { "reproduction.mode": "livebearer" }), hunter([]))).toEqual([]);
});

test("a hunter of which nobody knows what it eats leaves the answer open", () => {
  const unknown = animal("hunter", { "size.adultLength": adults(30) });
  const { outcome, open } = pairBy(predation, { species: unknown }, { species: prey(3) });
  expect(outcome).toBe("undetermined");
  expect(open).toContainEqual(
    expect.objectContaining({ of: 0, trait: "predation.eats", reason: "missing", couldBe: "blocking" }),
  );
});

describe("what makes it worse", () => {
  test("a hunter that comes by night", () => {
    const night = hunter(anyFish, 20, { "diet.light": ["night"] });
    expect(eaten(prey(3), night)).toMatchObject([{ measures: { hunts: { value: "night" } } }]);
  });

  test("spines that choke the hunter, which are then among what it was judged by", () => {
    expect(eaten(prey(3, { "care.hazards": ["spines"] }), hunter(anyFish, 20))).toMatchObject([
      { measures: { defence: { value: "spines" } }, traits: expect.arrayContaining(["care.hazards"]) },
    ]);
  });
});

test("grown ones of its own kind are no prey, shorter ones are", () => {
  const own = animal("own", {
    "predation.eats": upTo(7),
    "size.adultLength": adults(6),
    "size.bodyShape": "fusiform",
    "reproduction.mode": "scatters-eggs",
  });
  const beside = (length?: number) =>
    pairBy(predation, { species: own }, { species: own, ...(length && { length }) }).findings;
  expect(beside()).toEqual([]);
  expect(beside(3)).toMatchObject([{ from: 0, condition: { on: "group.length", wanted: { min: 6 } } }]);
});

describe("guarded eggs", () => {
  const robber = (light: Value<"diet.light">) => hunter([{ prey: "egg" }], 6, { "diet.light": light });
  const parent = prey(10, { "reproduction.mode": "guards-eggs" });

  test("are lost to those that feed at night", () => {
    expect(eaten(parent, robber(["night"]))).toMatchObject([{ weight: "advisory" }]);
    expect(eaten(parent, robber(["day"]))).toEqual([]);
    expect(eaten(prey(10), robber(["night"]))).toEqual([]);
  });

  test("that are wanted: nobody can tell whether the parents hold out", () => {
    const wanted = planBy(predation, [
      { species: robber(["night"]), unsexed: 1 },
      { species: parent, unsexed: 2, raises: true },
    ]).findings;
    expect(wanted).toMatchObject([
      { weight: "advisory", couldBe: "blocking", measures: { of: { value: "egg" } } },
    ]);
  });

  test("in a nest of bubbles, to those that live at the surface", () => {
    const nest = prey(10, { "reproduction.mode": "bubble-nest" });
    const from = (zone: Zone) =>
      hunter([{ prey: "egg" }], 6, { "diet.light": ["night"], "space.zones": [zone] });
    expect(eaten(nest, from("surface"))).toMatchObject([{ weight: "advisory" }]);
    expect(eaten(nest, from("bottom"))).toEqual([]);
  });

  test("on the ground, to none that feeds at the surface alone", () => {
    const from = (reach: Value<"diet.reach">) =>
      hunter([{ prey: "egg" }], 6, { "diet.light": ["night"], "diet.reach": reach });
    expect(eaten(parent, from(["surface"]))).toEqual([]);
    expect(eaten(parent, from(["surface", "midwater"]))).toMatchObject([{ weight: "advisory" }]);
  });

  test("that nobody guards are wanted in cover", () => {
    const wanted = (raises: boolean) =>
      planBy(predation, [
        { species: robber(["day"]), unsexed: 1 },
        { species: prey(10), unsexed: 2, raises },
      ]).findings;
    expect(wanted(false)).toEqual([]);
    expect(wanted(true)).toMatchObject([
      { weight: "restricting", condition: { on: "tank.cover", wanted: { min: 0.3 } } },
    ]);
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
    expect(eaten(parent, robber(["night"]), { count: 1 })).toEqual([]);
    expect(eaten(parent, robber(["night"]), { sex: "male" })).toEqual([]);
  });
});

describe("in a keeper's tank", () => {
  const byPredation = (a: SpeciesProfile, b: SpeciesProfile) =>
    findingsOf(pairBy(predation, { species: a }, { species: b }), "predation");

  test("an oscar eats a neon, whoever is named first", () => {
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

  test("an otocinclus is eaten by goldfish and may lodge in the throat of fancy ones", () => {
    expect(byPredation(carassiusAuratus, otocinclusVittatus)[0]?.weight).toBe("blocking");
    for (const form of Object.keys(carassiusAuratus.forms ?? {})) {
      const { outcome } = pairBy(
        predation,
        { species: carassiusAuratus, form },
        { species: otocinclusVittatus },
      );
      expect(["unsuitable", "undetermined"], form).toContain(outcome);
    }
  });

  test("loaches that take shrimps may pick dwarf crayfish apart", () => {
    for (const loach of [botiaStriata, ambastaiaSidthimunki])
      expect(byPredation(loach, cambarellusPatzcuarensis)).toMatchObject([
        { weight: "advisory", couldBe: "blocking" },
      ]);
  });

  test("a neon leaves grown cherry shrimps alone and eats their young, which keepers accept", () => {
    expect(byPredation(paracheirodonInnesi, neocaridinaDavidi)).toMatchObject([
      { weight: "advisory", measures: { of: { value: "shrimplet" } } },
    ]);
    expect(byPredation(paracheirodonInnesi, caridinaMultidentata)).toEqual([]);
  });

  test("a guppy's fry are eaten by a betta and not by a hillstream loach", () => {
    expect(byPredation(bettaSplendens, poeciliaReticulata)).toMatchObject([{ weight: "advisory" }]);
    expect(byPredation(sewelliaLineolata, poeciliaReticulata)).toEqual([]);
  });

  test("nobody here eats a snail but those that are known to", () => {
    expect(byPredation(paracheirodonInnesi, vittinaNatalensis)).toEqual([]);
    expect(byPredation(astronotusOcellatus, vittinaNatalensis)[0]?.weight).toBe("blocking");
  });
});
