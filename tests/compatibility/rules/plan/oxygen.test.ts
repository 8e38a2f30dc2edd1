import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import sewelliaLineolata from "vivary/catalog/sewellia-lineolata";
import { oxygen } from "../../../../src/compatibility/rules/plan/oxygen";
import type { Group, PlannedTank, PlannedWater } from "../../../../src/plan";
import type { TraitValue as Value } from "../../../../src/species";
import { adults, animal, inAnyNumber, type Stated } from "../../animals";
import { findingsOf, planBy, weighed } from "../../judging";

type Need = Value<"water.oxygenNeed">;
type Air = Value<"water.airBreathing">["kind"];

/** A fish of 10 cm and 10 g. */
const breather = (need: Need = "ordinary", kind: Air = "none", more: Stated = {}) =>
  animal("breather", {
    ...inAnyNumber,
    "water.oxygenNeed": need,
    "water.airBreathing": { kind },
    "size.adultLength": adults(10),
    "size.lengthWeight": { a: 0.01, b: 3 },
    ...more,
  });

/** A tank of 240 L at 24 °C. */
const judged = (
  groups: readonly Group[],
  tank: Partial<PlannedTank> = {},
  water: Partial<PlannedWater> = {},
) =>
  planBy(oxygen, groups, {
    tank: { base: { shape: "rectangle", length: 100, width: 40 }, height: 60, ...tank },
    water: { temperature: 24, ...water },
  });

// Beem (Oklahoma State University Cooperative Extension, 31 July 2014): no plant should cover the surface of a pond entirely.
describe("a surface that leaves close", () => {
  const under = (openSurface: number | undefined, kind: Air = "none") =>
    judged(
      [{ species: breather("low", kind), unsexed: 1 }],
      openSurface === undefined ? {} : { openSurface },
    );
  const thinned = { on: "tank.openSurface", wanted: { min: 0.2 } };

  test("is opened, whoever lives below it", () => {
    for (const kind of ["none", "facultative", "obligate"] as const)
      expect(under(0, kind).findings).toMatchObject([{ weight: "restricting", condition: thinned }]);
    expect(under(0.2).outcome).toBe("suitable");
  });

  test("is told where a plan says so, and asked of air breathers alone where it does not", () => {
    expect(under(undefined).conditions).toEqual([]);
    expect(under(undefined, "obligate").conditions).toMatchObject([thinned]);
  });

  test("in a keeper's tank: neons under a carpet of duckweed", () => {
    expect(
      judged([{ species: paracheirodonInnesi, unsexed: 10 }], { openSurface: 0 }).conditions,
    ).toMatchObject([thinned]);
  });
});

describe("the oxygen that water holds through a night without exchange", () => {
  // At 24 °C fresh water in balance with air holds 8.42 mg/L (USGS tables of 2011), 3.42 above the limit of 5. A fish
  // of 10 g uses 2.676 mg/h at rest (Clarke & Johnston 1999), and 560/364 of it in a group (Lucas & Priede 1992):
  // 240 L last twenty of them 3.42 × 240 / (20 × 4.117) = 9.97 h, thirteen of them 15.3 h.
  const stillWater = { on: "tank.flow.strongest", wanted: { oneOf: ["gentle", "moderate", "strong"] } };

  test("is used up before morning by many fish", () => {
    const [finding] = findingsOf(judged([{ species: breather(), unsexed: 20 }]), "oxygen");
    expect(finding).toMatchObject({ weight: "restricting", condition: stillWater, watchFor: "gasping" });
    const { hours, saturation } = finding?.measures ?? {};
    expect(hours).toMatchObject({ value: expect.closeTo(9.97, 1), unit: "h" });
    expect(saturation).toMatchObject({ value: expect.closeTo(8.42, 2), unit: "mg/L" });
    expect(judged([{ species: breather(), unsexed: 13 }]).findings).toEqual([]);
  });

  test("lasts less long on the hottest day", () => {
    const hot = judged([{ species: breather(), unsexed: 13 }], {}, { hottest: 31 });
    expect(weighed(hot).findings).toEqual(["restricting"]);
  });

  test("is counted on in no water of which nobody says how warm or how much it is", () => {
    const one = [{ species: breather(), unsexed: 1 }];
    for (const verdict of [judged(one, {}, { temperature: undefined }), judged(one, { height: undefined })]) {
      const [finding] = findingsOf(verdict, "oxygen");
      expect(finding).toMatchObject({ weight: "restricting", condition: stillWater });
      expect(finding?.measures?.hours).toBeUndefined();
    }
  });

  test("does not matter where the surface is moved", () => {
    const flow = { calmest: "still", strongest: "gentle" } as const;
    expect(weighed(judged([{ species: breather(), unsexed: 20 }], { flow }))).toEqual({
      findings: [],
      met: ["restricting"],
    });
  });

  test("is shared by the whole stock", () => {
    const others = {
      species: animal("other", {
        "size.adultLength": adults(10),
        "size.lengthWeight": { a: 0.01, b: 3 },
        "water.oxygenNeed": "low",
        "water.airBreathing": { kind: "facultative" },
      }),
      unsexed: 12,
    };
    const found = judged([{ species: breather(), unsexed: 8 }, others]).findings;
    expect(found).toMatchObject([{ from: 0, weight: "restricting" }]);
  });

  test("is that for as many as belong together", () => {
    const shoal = breather("ordinary", "none", { "social.group": { least: 20 } });
    expect(weighed(judged([{ species: shoal, unsexed: 1 }])).findings).toEqual(["restricting"]);
    const disputed = animal(
      "breather",
      {
        ...inAnyNumber,
        "water.oxygenNeed": "ordinary",
        "water.airBreathing": { kind: "none" },
        "size.adultLength": adults(10),
        "size.lengthWeight": { a: 0.01, b: 3 },
      },
      { also: [{ "social.group": { least: 20 } }] },
    );
    expect(judged([{ species: disputed, unsexed: 1 }])).toMatchObject({
      outcome: "suitable",
      bounds: { atBest: "suitable", atWorst: "conditional" },
      open: [{ of: 0, trait: "social.group", reason: "disputed", values: [{ least: 1 }, { least: 20 }] }],
    });
  });

  test("is counted by the span in which the mass lies", () => {
    // Of a fusiform fish of 10 cm 95 in 100 weigh 5.6 to 27 g (Froese, Thorson & Reyes 2014).
    const species = animal("breather", {
      ...inAnyNumber,
      "water.oxygenNeed": "ordinary",
      "water.airBreathing": { kind: "none" },
      "size.adultLength": adults(10),
      "size.bodyShape": "fusiform",
    });
    const { outcome, bounds, open } = judged([{ species, unsexed: 12 }]);
    expect(outcome).toBe("suitable");
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
    expect(open).toEqual([]);
  });

  test("stays open while nobody knows how long some fish grow", () => {
    const { outcome, open } = judged([
      { species: breather(), unsexed: 1 },
      { species: animal("stranger"), unsexed: 1 },
    ]);
    expect(outcome).toBe("undetermined");
    expect(open).toMatchObject([{ of: 1, trait: "size.adultLength", reason: "missing" }]);
  });

  test("is not reckoned where the equation does not hold", () => {
    const { open, bounds } = judged([{ species: breather(), unsexed: 1 }], {}, { hottest: 41 });
    expect(open).toMatchObject([{ reason: "outside-domain", of: 0 }]);
    expect(bounds.atWorst).toBe("conditional");
  });
});

test("who needs much oxygen needs moved water, however few they are", () => {
  const few = [{ species: breather("high"), unsexed: 1 }];
  expect(weighed(judged(few)).findings).toEqual(["restricting"]);
  expect(weighed(judged(few, { flow: { calmest: "gentle", strongest: "strong" } })).met).toEqual([
    "restricting",
  ]);
});

test("who must breathe air needs a surface it can reach, and takes its oxygen there", () => {
  const many = [{ species: breather("low", "obligate"), unsexed: 100 }];
  expect(judged(many).findings).toMatchObject([
    { weight: "restricting", condition: { on: "tank.openSurface", wanted: { min: 0.2 } } },
  ]);
  expect(weighed(judged(many, { openSurface: 0.2 }))).toEqual({ findings: [], met: ["restricting"] });
});

describe("in a keeper's tank", () => {
  const weights = (group: Group, tank?: Partial<PlannedTank>) => weighed(judged([group], tank)).findings;

  test("twenty neons never run out of air in 240 L", () => {
    expect(weights({ species: paracheirodonInnesi, unsexed: 20 })).toEqual([]);
  });

  test("six grown goldfish in 60 L gasp before the morning if the pump stops", () => {
    const small = { base: { shape: "rectangle", length: 60, width: 30 }, height: 36 } as const;
    expect(weights({ species: carassiusAuratus, unsexed: 6 }, small)).toEqual(["restricting"]);
  });

  test("a hillstream loach needs a current, a betta the surface", () => {
    expect(weights({ species: sewelliaLineolata, unsexed: 3 })).toEqual(["restricting"]);
    expect(weights({ species: bettaSplendens, males: 1 })).toEqual(["restricting"]);
  });
});
