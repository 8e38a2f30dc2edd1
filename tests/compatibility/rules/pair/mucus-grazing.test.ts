import { expect, test } from "vitest";
import ancistrusCirrhosus from "vivary/catalog/ancistrus-cirrhosus";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import gyrinocheilusAymonieri from "vivary/catalog/gyrinocheilus-aymonieri";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import potamotrygonMotoro from "vivary/catalog/potamotrygon-motoro";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import pterygoplichthysPardalis from "vivary/catalog/pterygoplichthys-pardalis";
import symphysodonAequifasciatus from "vivary/catalog/symphysodon-aequifasciatus";
import { assessPlan } from "../../../../src/compatibility";
import { mucusGrazing } from "../../../../src/compatibility/rules/pair/mucus-grazing";
import type { Offering } from "../../../../src/plan";
import type { Act, SpeciesProfile, Stage, TraitValue as Value } from "../../../../src/species";
import { adults, adultsBySex, animal, type Stated } from "../../animals";
import { pairBy, planBy, planOf, weighed } from "../../judging";

const rasper = (from?: Stage, when?: Act["when"]) =>
  animal("rasper", {
    "size.adultLength": adults(15),
    "temperament.acts": [
      { does: "rasps-mucus", target: "any", ...(from && { from }), ...(when && { when }) },
    ],
    "diet.foods": ["algae", "dry"],
    "diet.reach": ["bottom"],
    "diet.light": ["day"],
  });
const flank = (more: Stated = {}) =>
  animal("flank", {
    "temperament.acts": [],
    "size.adultLength": adults(8),
    "size.bodyShape": "short-deep",
    "diet.pace": "ordinary",
    ...more,
  });
const weights = (more?: Stated) =>
  pairBy(mucusGrazing, { species: rasper() }, { species: flank(more) }).findings.map(({ weight }) => weight);

test("flat flanks and slow fish are rasped, quick spindles are let alone", () => {
  expect(weights()).toEqual(["restricting"]);
  expect(weights({ "size.bodyShape": "fusiform", "diet.pace": "slow" })).toEqual(["restricting"]);
  expect(weights({ "size.bodyShape": "fusiform" })).toEqual([]);
  expect(weights({ "size.bodyShape": "fusiform", "size.adultLength": adults(9.9) })).toEqual([]);
  expect(weights({ "size.bodyShape": "fusiform", "size.adultLength": adults(10) })).toEqual(["restricting"]);
});

test("small quick fish are let alone whatever their shape, broad ones are not", () => {
  expect(weights({ "diet.pace": "fast" })).toEqual([]);
  expect(weights({ "diet.pace": "fast", "size.adultLength": adults(10) })).toEqual(["restricting"]);
});

test("who rasps only where it finds too little is worth knowing beside all that are not slow", () => {
  const beside = (pace: Value<"diet.pace">) =>
    pairBy(
      mucusGrazing,
      { species: rasper(undefined, "crowded") },
      { species: flank({ "diet.pace": pace }) },
    ).findings.map(({ weight }) => weight);
  expect(beside("ordinary")).toEqual(["advisory"]);
  expect(beside("slow")).toEqual(["restricting"]);
});

test("greens every day mend it where it rasps for want of them", () => {
  const fed = (offerings: readonly Offering[]) => ({
    ...planOf([
      { species: rasper(), unsexed: 1 },
      { species: flank(), unsexed: 2 },
    ]),
    offerings,
  });
  const outcome = (offerings: readonly Offering[]) =>
    assessPlan(fed(offerings), { rules: [mucusGrazing] }).outcome;
  expect(outcome([{ food: "dry", place: "bottom" }])).toBe("conditional");
  expect(outcome([{ food: "algae", place: "bottom" }])).toBe("suitable");
});

test("of slow, broad flanks nobody can tell whether greens keep it off", () => {
  const beside = (more: Stated, when?: Act["when"]) =>
    pairBy(mucusGrazing, { species: rasper(undefined, when) }, { species: flank(more) }).outcome;
  const broad: Stated = { "size.adultLength": adults(10), "diet.pace": "slow" };
  expect(beside(broad)).toBe("undetermined");
  expect(beside(broad, "crowded")).toBe("conditional");
  expect(beside({ ...broad, "size.adultLength": adults(9.9) })).toBe("conditional");
  expect(beside({ ...broad, "diet.pace": "ordinary" })).toBe("conditional");
  expect(beside({ ...broad, "size.bodyShape": "elongated" })).toBe("conditional");
});

test("where grown ones rasp for being grown, nothing mends it: young ones grow", () => {
  const kept = (group: { readonly unsexed?: number; readonly juveniles?: number }) =>
    weighed(
      planBy(mucusGrazing, [
        { species: rasper("adult"), ...group },
        { species: flank(), unsexed: 2 },
      ]),
    );
  expect(kept({ unsexed: 1 })).toEqual({ findings: ["blocking"], met: [] });
  expect(kept({ juveniles: 1 })).toEqual({ findings: ["blocking"], met: [] });
});

test("of spindles nearly as long as broad ones nobody can tell, where nothing keeps it off", () => {
  const beside = (length: number, from?: Stage) =>
    pairBy(
      mucusGrazing,
      { species: rasper(from) },
      { species: flank({ "size.bodyShape": "fusiform", "size.adultLength": adults(length) }) },
    ).findings;
  expect(beside(7.5, "adult")).toMatchObject([{ weight: "advisory", couldBe: "blocking" }]);
  expect(beside(7.4, "adult")).toEqual([]);
  expect(beside(9.9)).toEqual([]);
});

test("a flank is as broad as that of the longer sex, whichever is kept", () => {
  const long = flank({ "size.bodyShape": "fusiform", "size.adultLength": adultsBySex(9, 12) });
  const beside = (sex?: "male" | "female") =>
    pairBy(mucusGrazing, { species: rasper("adult") }, { species: long, sex }).findings;
  for (const sex of [undefined, "male", "female"] as const)
    expect(beside(sex)).toMatchObject([{ weight: "blocking" }]);
});

test("where one sex alone rasps, or may for all that is known, the other is asked for", () => {
  const males = (...foods: Value<"diet.foods">) =>
    animal("rasper", {
      "size.adultLength": adults(15),
      "temperament.acts": [{ does: "rasps-mucus", target: "any", doer: "male" }],
      "diet.foods": foods,
    });
  const broad = flank({ "size.adultLength": adults(12), "diet.pace": "slow" });
  for (const species of [males("dry"), males("algae")]) {
    const { outcome, conditions } = pairBy(mucusGrazing, { species }, { species: broad });
    expect(outcome).toBe("conditional");
    expect(conditions).toMatchObject([{ on: "group.sex", of: 0, wanted: { oneOf: ["female"] } }]);
  }
});

test("where nobody knows whether the females that will join males take greens, these may be asked for", () => {
  const males = (more: Stated) =>
    animal("rasper", {
      "size.adultLength": adults(15),
      "temperament.acts": [{ does: "rasps-mucus", target: "any", doer: "female" }],
      "social.living": "harem",
      "social.group": { least: 6 },
      "social.femalesPerMale": 1,
      ...more,
    });
  const boundsOf = (more: Stated) =>
    pairBy(mucusGrazing, { species: males(more), sex: "male", count: 1 }, { species: flank() }).bounds;
  expect(boundsOf({ "diet.foods": ["algae"] })).toEqual({ atBest: "conditional", atWorst: "conditional" });
  expect(boundsOf({})).toEqual({ atBest: "suitable", atWorst: "conditional" });
});

test("a shrimp has no flank to rasp, and who takes no greens cannot be fed off it", () => {
  const shrimp = animal("shrimp", { "size.adultLength": adults(5) }, { kind: "shrimp" });
  expect(pairBy(mucusGrazing, { species: rasper() }, { species: shrimp }).findings).toEqual([]);
  const meatEater = animal("rasper", {
    "size.adultLength": adults(15),
    "temperament.acts": [{ does: "rasps-mucus", target: "any" }],
    "diet.foods": ["dry"],
  });
  expect(pairBy(mucusGrazing, { species: meatEater }, { species: flank() }).findings).toMatchObject([
    { weight: "blocking" },
  ]);
});

test("in a keeper's tank: a grown algae eater and a pleco rasp discus and goldfish, not neons", () => {
  const rasped = (species: SpeciesProfile) =>
    [gyrinocheilusAymonieri, pterygoplichthysPardalis].map(
      (by) => pairBy(mucusGrazing, { species: by }, { species }).findings.length,
    );
  expect(rasped(symphysodonAequifasciatus)).toEqual([1, 2]);
  expect(rasped(carassiusAuratus)).toEqual([1, 1]);
  expect(rasped(paracheirodonInnesi)).toEqual([0, 0]);
});

test("in a keeper's tank: a bristlenose lets angelfish alone", () => {
  expect(
    pairBy(mucusGrazing, { species: ancistrusCirrhosus }, { species: pterophyllumScalare }).findings,
  ).toEqual([]);
});

test("in a keeper's tank: a vegetable makes no pleco safe for discus and rays", () => {
  for (const species of [symphysodonAequifasciatus, potamotrygonMotoro]) {
    const groups = [
      { species: pterygoplichthysPardalis, unsexed: 1 },
      { species, unsexed: 1 },
    ];
    const offerings = [{ food: "plants", place: "bottom" }] as const;
    const { outcome } = assessPlan({ ...planOf(groups), offerings }, { rules: [mucusGrazing] });
    expect(outcome).toBe("undetermined");
  }
});
