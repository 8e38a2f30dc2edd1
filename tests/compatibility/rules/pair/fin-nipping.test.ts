import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import { finNipping } from "../../../../src/compatibility/rules/pair/fin-nipping";
import type { Kind, TraitValue as Value } from "../../../../src/species";
import { adults, adultsBySex, animal, type Stated } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

type Act = Value<"temperament.acts">[number];
type Target = Act["target"];

const nipping = (...acts: readonly Partial<Act>[]) =>
  animal("nipper", {
    "temperament.acts": acts.map((act) => ({ does: "nips-fins", target: "any", ...act })),
    "size.adultLength": adults(7),
    "space.zones": ["midwater"],
    "diet.reach": ["midwater"],
    "appearance.longFins": false,
  });
const nipper = (target: Target) => nipping({ target });
const quick: Stated = { "diet.pace": "fast", "size.adultLength": adults(7), "space.zones": ["midwater"] };
const finned = (long?: boolean, more: Stated = {}, kind: Kind = "fish") =>
  animal(
    "finned",
    {
      "temperament.acts": [],
      ...quick,
      ...(long !== undefined && { "appearance.longFins": long }),
      ...more,
    },
    { kind },
  );
const found = (by: ReturnType<typeof nipping>, species: ReturnType<typeof finned>) =>
  pairBy(finNipping, { species: by }, { species }).findings;
const weights = (...pair: Parameters<typeof found>) => found(...pair).map(({ weight }) => weight);

const shortFinned = { on: "group.longFins", of: 1, wanted: { oneOf: [false] } };

test("long fins are bitten until they are gone: it blocks, and names a form with short fins", () => {
  for (const target of ["long-finned", "any"] as const) {
    expect(found(nipper(target), finned(true))).toMatchObject([
      { weight: "blocking", watchFor: "torn-fins", instead: shortFinned },
    ]);
  }
  expect(pairBy(finNipping, { species: nipper("any") }, { species: finned(true) }).conditions).toEqual([]);
});

test("who nips long fins lets short ones be", () => {
  expect(weights(nipper("long-finned"), finned(false))).toEqual([]);
  expect(weights(nipper("long-finned"), finned(false, { "diet.pace": "slow" }))).toEqual([]);
});

test("who nips for want of room or company leaves the quick alone: slow fish with long fins need cover", () => {
  const crowded = nipping({ target: "long-finned", when: "crowded" });
  const slow: Stated = { "diet.pace": "slow", "space.openWater": 0 };
  expect(found(crowded, finned(true, slow))).toMatchObject([
    { weight: "restricting", watchFor: "torn-fins", condition: { on: "tank.cover" } },
  ]);
  expect(weights(crowded, finned(true))).toEqual(["advisory"]);
  expect(weights(crowded, finned(false, slow))).toEqual([]);
});

test("one animal by itself nips nobody, two of a kind nip each other now and then", () => {
  const ofKind = (unsexed: number) =>
    planBy(finNipping, [{ species: nipper("any"), unsexed }]).findings.map(({ weight }) => weight);
  expect(ofKind(1)).toEqual([]);
  expect(ofKind(2)).toEqual(["advisory"]);
});

test("a female betta tears fins at times, a rough one for good", () => {
  const beside = (temper: "typical" | "bolder") =>
    pairBy(
      finNipping,
      { species: bettaSplendens, sex: "female", temper },
      { species: poeciliaReticulata, sex: "male" },
    ).findings;
  expect(beside("typical")).toMatchObject([{ weight: "advisory", watchFor: "torn-fins" }]);
  expect(beside("bolder")).toMatchObject([{ weight: "blocking" }]);
});

describe("claws", () => {
  const crayfish = animal(
    "crayfish",
    {
      "temperament.acts": [{ does: "nips-fins", target: "any" }],
      "size.adultLength": adults(10),
      "space.zones": ["bottom"],
      "diet.light": ["night"],
    },
    { kind: "crayfish" },
  );
  const resting = (length: number, ...zones: Value<"space.zones">) =>
    weights(
      crayfish,
      finned(false, { "size.adultLength": adults(length), "space.zones": zones, "diet.light": ["day"] }),
    );

  test("wear out what is shorter and lives on the ground alone", () => {
    expect(resting(9.9, "bottom")).toEqual(["blocking"]);
    expect(resting(10, "bottom")).toEqual(["advisory"]);
    expect(resting(9.9, "bottom", "midwater")).toEqual(["advisory"]);
  });

  test("may seize what is longer and rests on the ground alone, or sleeps there: nobody can tell", () => {
    const beside = (light: Value<"diet.light">, ...zones: Value<"space.zones">) =>
      pairBy(
        finNipping,
        { species: crayfish },
        {
          species: finned(false, {
            "size.adultLength": adults(15),
            "space.zones": zones,
            "diet.light": light,
          }),
        },
      );
    const open = {
      outcome: "undetermined",
      findings: [{ weight: "advisory", couldBe: "blocking", measures: { hunts: { value: "night" } } }],
    };
    expect(beside(["day"], "bottom")).toMatchObject(open);
    expect(beside(["night"], "bottom")).toMatchObject(open);
    expect(beside(["day"], "bottom", "midwater")).toMatchObject(open);
    expect(beside(["night"], "bottom", "midwater").outcome).toBe("suitable");
    expect(beside(["day"], "midwater").outcome).toBe("suitable");
  });
});

describe("who nips any", () => {
  test("wears out the slow, and who is much smaller, whatever their fins", () => {
    expect(weights(nipper("any"), finned(false, { "diet.pace": "slow" }))).toEqual(["blocking"]);
    // Half of 7 cm.
    expect(weights(nipper("any"), finned(false, { "size.adultLength": adults(3.4) }))).toEqual(["blocking"]);
    expect(weights(nipper("any"), finned(false, { "size.adultLength": adults(3.5) }))).toEqual(["advisory"]);
  });

  test("lets young in that grow to hold their own once they are long enough", () => {
    const young = (length?: number, cm = 5) =>
      pairBy(
        finNipping,
        { species: nipper("any") },
        { species: finned(false, { "size.adultLength": adults(cm) }), stage: "juvenile", length },
      ).findings;
    const longer = [
      { weight: "restricting", condition: { on: "group.length", of: 1, wanted: { min: 3.5 } } },
    ];
    expect(young()).toMatchObject(longer);
    expect(young(2)).toMatchObject(longer);
    expect(young(3.5)).toMatchObject([{ weight: "advisory" }]);
    expect(young(2, 3)).toMatchObject([{ weight: "blocking" }]);
  });

  test("is a nuisance to others that hold their own", () => {
    expect(weights(nipper("any"), finned(false))).toEqual(["advisory"]);
    expect(weights(nipper("any"), finned(false, { "diet.pace": "ordinary" }))).toEqual(["advisory"]);
  });

  test("is answered by no form where the other is slow in any", () => {
    expect(found(nipper("any"), finned(true, { "diet.pace": "slow" }))[0]).not.toHaveProperty("instead");
    expect(found(nipper("long-finned"), finned(true, { "diet.pace": "slow" }))).toMatchObject([
      { weight: "blocking", instead: shortFinned },
    ]);
  });

  test("only at times is worth knowing, long fins or short", () => {
    expect(weights(nipping({ when: "feeding" }), finned(true))).toEqual(["advisory"]);
    expect(weights(nipping({ when: "crowded" }), finned(false, { "diet.pace": "slow" }))).toEqual([
      "advisory",
    ]);
    expect(
      planBy(finNipping, [
        { species: nipping({ when: "crowded" }), unsexed: 6, temper: "bolder" },
        { species: finned(true), unsexed: 6 },
      ]).findings,
    ).toMatchObject([
      { weight: "advisory", to: 0 },
      { weight: "blocking", to: 1 },
    ]);
  });
});

describe("its own kind", () => {
  const own = (target: Target) =>
    pairBy(finNipping, { species: nipper(target) }, { species: nipper(target) });

  test("holds its own: worth knowing", () => {
    for (const target of ["own-kind", "any"] as const) {
      expect(own(target).findings[0], target).toMatchObject({ weight: "advisory", watchFor: "torn-fins" });
    }
    expect(own("long-finned").findings).toEqual([]);
  });
});

describe("in another part of the water", () => {
  const below: Stated = { "space.zones": ["bottom"] };
  const by = (
    light: Value<"diet.light">,
    target: Target = "any",
    reach: Value<"diet.reach"> = ["midwater"],
  ) =>
    animal("nipper", {
      "diet.reach": reach,
      "temperament.acts": [{ does: "nips-fins", target }],
      "size.adultLength": adults(7),
      "space.zones": ["midwater"],
      "diet.light": light,
    });

  test("who is about at night may find others asleep, and nobody can tell", () => {
    const asleep = finned(true, { ...below, "diet.light": ["day"] });
    expect(found(by(["night"]), asleep)).toMatchObject([
      { weight: "advisory", couldBe: "blocking", measures: { hunts: { value: "night" } } },
    ]);
    expect(found(by(["day"]), asleep)).toEqual([]);
    expect(found(by(["night"]), finned(true, { ...below, "diet.light": ["night"] }))).toEqual([]);
    expect(found(by(["night"]), finned(false, { ...below, "diet.light": ["day"] }))).toEqual([]);
  });

  test("who feeds where others live may nip them there, and nobody can tell", () => {
    const feeding = by(["day"], "long-finned", ["midwater", "bottom"]);
    expect(found(feeding, finned(true, below))).toMatchObject([
      { weight: "advisory", couldBe: "blocking", measures: { feeds: { value: "bottom" } } },
    ]);
    const slow: Stated = { ...below, "diet.pace": "slow", "diet.light": ["day", "night"] };
    expect(found(by(["day"], "any", ["bottom"]), finned(false, slow))).toEqual([]);
    expect(found(by(["day"], "long-finned"), finned(true, { ...below, "diet.light": ["day"] }))).toEqual([]);
  });

  test("long fins that come down to feed where it lives: worth knowing", () => {
    const visiting = finned(true, { "space.zones": ["surface"], "diet.reach": ["surface", "midwater"] });
    expect(found(by(["day"], "long-finned"), visiting)).toMatchObject([
      { weight: "advisory", measures: { feeds: { value: "midwater" } } },
    ]);
    const nips = { does: "nips-fins", target: "long-finned" } as const;
    const doing = (...acts: readonly Act[]) =>
      animal("nipper", {
        "temperament.acts": acts,
        "size.adultLength": adults(7),
        "space.zones": ["midwater"],
        "diet.reach": ["midwater"],
        "diet.light": ["day"],
      });
    expect(found(doing({ ...nips, when: "breeding" }, nips), visiting)).toMatchObject([
      { measures: { feeds: { value: "midwater" } } },
    ]);
    expect(found(doing({ ...nips, when: "breeding" }), visiting)).toEqual([]);
    const { findings } = pairBy(finNipping, { species: by(["day"], "long-finned") }, { species: visiting });
    expect(findings).not.toContainEqual(expect.objectContaining({ couldBe: "blocking" }));
    const short = finned(false, { "space.zones": ["surface"], "diet.reach": ["surface", "midwater"] });
    expect(found(by(["day"], "long-finned"), short)).toEqual([]);
  });

  test("but not in the part beyond", () => {
    const far = animal("nipper", {
      "diet.reach": ["surface"],
      "temperament.acts": [{ does: "nips-fins", target: "any" }],
      "size.adultLength": adults(7),
      "space.zones": ["surface"],
      "diet.light": ["night"],
    });
    expect(found(far, finned(true, { ...below, "diet.light": ["day"] }))).toEqual([]);
  });
});

test("who never meets is never nipped; shrimps have no fins to nip", () => {
  const awake = { "space.zones": ["bottom"], "diet.light": ["night"] } as const;
  expect(weights(nipper("any"), finned(true, awake))).toEqual([]);
  expect(weights(nipper("any"), finned(true, {}, "shrimp"))).toEqual([]);
});

test("fins nobody described count as long, and stay open", () => {
  const { outcome, bounds, open } = pairBy(
    finNipping,
    { species: nipper("long-finned") },
    { species: finned() },
  );
  expect(outcome).toBe("unsuitable");
  expect(bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
  expect(open).toMatchObject([{ of: 1, trait: "appearance.longFins", reason: "missing" }]);
});

test("a pace nobody knows counts as slow", () => {
  const { diet: _, ...unknown } = finned(false);
  expect(weights(nipper("any"), unknown)).toEqual(["blocking"]);
});

test("several such acts are one reason, the gravest, in whatever order they are stated", () => {
  const [always, atTimes] = [{ target: "long-finned" }, { when: "feeding" }] as const;
  for (const acts of [
    [always, atTimes],
    [atTimes, always],
  ]) {
    expect(weights(nipping(...acts), finned(true))).toEqual(["blocking"]);
    expect(weights(nipping(...acts), finned(false))).toEqual(["advisory"]);
  }
});

test("where the shorter sex alone is worn out, the other is asked for", () => {
  const nips = nipping({ target: "any" });
  const species = finned(false, { "size.adultLength": adultsBySex(4, 3) });
  const pair = (sex?: "male" | "female") => pairBy(finNipping, { species: nips }, { species, sex });
  expect(pair().conditions).toMatchObject([{ on: "group.sex", of: 1, wanted: { oneOf: ["male"] } }]);
  expect([pair("male").outcome, pair("female").outcome]).toEqual(["suitable", "unsuitable"]);
});

describe("a bred form", () => {
  const forms = { veil: { "appearance.longFins": true }, short: { "appearance.longFins": false } } as const;
  const bred = animal("bred", { "temperament.acts": [], "appearance.longFins": true, ...quick }, { forms });

  test("with short fins is out of danger, one with long fins is not", () => {
    const beside = (form?: string) =>
      weighed(
        planBy(finNipping, [
          { species: nipper("long-finned"), unsexed: 6 },
          { species: bred, form, unsexed: 6 },
        ]),
      );
    expect(beside("short")).toEqual({ findings: [], met: [] });
    expect(beside("veil")).toEqual({ findings: ["blocking"], met: [] });
    expect(beside()).toEqual({ findings: ["blocking"], met: [] });
  });

  test("is nipped by its own kind", () => {
    const nips = animal(
      "nips",
      {
        "temperament.acts": [{ does: "nips-fins", target: "long-finned" }],
        "appearance.longFins": false,
        ...quick,
      },
      { forms },
    );
    expect(weighed(pairBy(finNipping, { species: nips }, { species: nips, form: "veil" })).findings).toEqual([
      "blocking",
    ]);
    expect(weighed(pairBy(finNipping, { species: nips }, { species: nips })).findings).toEqual([]);
  });
});

test("fins that sources dispute keep a plan between both answers", () => {
  const disputed = animal(
    "finned",
    { "temperament.acts": [], "appearance.longFins": false, ...quick },
    { also: [{ "appearance.longFins": true }] },
  );
  const { outcome, bounds } = planBy(finNipping, [
    { species: nipper("long-finned"), unsexed: 6 },
    { species: disputed, unsexed: 6 },
  ]);
  expect(outcome).toBe("suitable");
  expect(bounds).toEqual({ atBest: "suitable", atWorst: "unsuitable" });
});

test("tiger barbs nip angelfish, guppies and bettas, and let a cory be", () => {
  for (const species of [pterophyllumScalare, poeciliaReticulata, bettaSplendens]) {
    expect(weighed(pairBy(finNipping, { species: puntigrusTetrazona }, { species })).findings).toEqual([
      "blocking",
    ]);
  }
  expect(
    weighed(pairBy(finNipping, { species: puntigrusTetrazona }, { species: osteogasterAenea })).findings,
  ).toEqual([]);
});
