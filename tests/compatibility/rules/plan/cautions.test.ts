import { describe, expect, test } from "vitest";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import hoplisomaPanda from "vivary/catalog/hoplisoma-panda";
import hypancistrusZebra from "vivary/catalog/hypancistrus-zebra";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import phractocephalusHemioliopterus from "vivary/catalog/phractocephalus-hemioliopterus";
import potamotrygonMotoro from "vivary/catalog/potamotrygon-motoro";
import procambarusVirginalis from "vivary/catalog/procambarus-virginalis";
import { assessPlan } from "../../../../src/compatibility";
import { cautionDevices } from "../../../../src/compatibility/rules/plan/caution-devices";
import { cautionElectricity } from "../../../../src/compatibility/rules/plan/caution-electricity";
import { cautionFloor } from "../../../../src/compatibility/rules/plan/caution-floor";
import { cautionHazards } from "../../../../src/compatibility/rules/plan/caution-hazards";
import { cautionLaw } from "../../../../src/compatibility/rules/plan/caution-law";
import { cautionRelease } from "../../../../src/compatibility/rules/plan/caution-release";
import { cautionZoonoses } from "../../../../src/compatibility/rules/plan/caution-zoonoses";
import type { Lawgiver } from "../../../../src/plan";
import type { SpeciesProfile } from "../../../../src/species";
import { animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const one = [{ species: animal("fish"), unsexed: 1 }];

test("electricity, zoonoses and release are spoken of with every plan, and change no outcome", () => {
  for (const rule of [cautionElectricity, cautionZoonoses, cautionRelease]) {
    const verdict = planBy(rule, one);
    expect(verdict.findings).toMatchObject([{ rule: rule.id, weight: "advisory" }]);
    expect(verdict.outcome).toBe("suitable");
  }
});

describe("the floor", () => {
  // 1.5 kN/m² under water of 997.05 kg/m³ at 9.80665 m/s² is a depth of 0.15341 m, a quarter less with all that stands with it.
  const deep = (height: number, length = 300, width = 100) =>
    planBy(cautionFloor, one, { tank: { base: { shape: "rectangle", length, width }, height } });

  test("is spoken of from the load that floors of dwellings are reckoned for", () => {
    expect(deep(12.27).findings).toEqual([]);
    expect(weighed(deep(12.28)).findings).toEqual(["advisory"]);
  });

  // 3.0 kN at 9.80665 m/s² is a mass of 305.91 kg, of which 244.73 kg are water, 245.46 L.
  test("is not spoken of for a tank that weighs no more than three or four people", () => {
    expect(deep(50, 98.1, 50).findings).toEqual([]);
    expect(deep(50, 98.2, 50).findings).toHaveLength(1);
  });

  test("comes with mass and load", () => {
    expect(deep(50, 100, 60).findings).toMatchObject([
      {
        measures: {
          mass: { value: expect.closeTo(0.99705 * 300, 9), unit: "kg" },
          load: { value: expect.closeTo(1.25 * 0.99705 * 5 * 0.980665, 9), unit: "kN/m2" },
        },
      },
    ]);
  });
});

// Common practice, no source.
test.each([
  [
    "a redtail catfish, which lies on the ground, is warned of the heater",
    phractocephalusHemioliopterus,
    ["heater"],
  ],
  ["a panda corydoras is too small to lie against one", hoplisomaPanda, []],
  ["a goldfish is large, and swims", carassiusAuratus, []],
  ["a crayfish climbs into pumps", procambarusVirginalis, ["pump"]],
])("%s", (_, species, devices) => {
  const { findings } = planBy(cautionDevices, [{ species, unsexed: 1 }]);
  expect(findings.map(({ weight, measures }) => [weight, measures])).toEqual(
    devices.map((device) => ["advisory", { device: { value: device } }]),
  );
});

test("each hazard to people is named", () => {
  const stinger = animal("stinger", { "care.hazards": ["venom", "spines"] });
  expect(planBy(cautionHazards, [{ species: stinger, unsexed: 1 }]).findings).toMatchObject([
    { weight: "advisory", measures: { hazard: { value: "venom" } } },
    { weight: "advisory", measures: { hazard: { value: "spines" } } },
  ]);
  expect(planBy(cautionHazards, [{ species: potamotrygonMotoro, unsexed: 1 }]).findings).toContainEqual(
    expect.objectContaining({
      measures: { hazard: { value: "venom" }, family: { value: "Potamotrygonidae" } },
    }),
  );
  expect(planBy(cautionHazards, [{ species: paracheirodonInnesi, unsexed: 1 }]).findings).toEqual([]);
});

/** What the laws of some places are told of a species. */
const toldInAll = (jurisdiction: readonly Lawgiver[] | undefined, species: SpeciesProfile) =>
  assessPlan(
    {
      tank: { base: { shape: "rectangle", length: 60, width: 30 } },
      ...(jurisdiction && { jurisdiction }),
      groups: [{ species, unsexed: 1 }],
    },
    { rules: [cautionLaw] },
  ).findings;

const toldIn = (place: Lawgiver, species: SpeciesProfile) => toldInAll([place], species);

test("laws that name the species are cited with instrument and date", () => {
  const listing = {
    code: "eu",
    jurisdiction: "Nowhere",
    instrument: "Act 1",
    date: "2020-01-01",
    effect: "Forbids keeping.",
    basis: "memory",
  } as const;
  const species = { ...animal("listed"), listings: [listing] };
  expect(planBy(cautionLaw, [{ species, unsexed: 1 }]).findings).toMatchObject([
    { weight: "advisory", from: 0, measures: { laws: { value: 1 } } },
  ]);
  expect(toldIn("japan", species)).toEqual([]);
  expect(toldIn("eu", species)).toMatchObject([
    {
      weight: "advisory",
      from: 0,
      measures: {
        jurisdiction: { value: "Nowhere" },
        instrument: { value: "Act 1" },
        date: { value: "2020-01-01" },
        effect: { value: "Forbids keeping." },
      },
    },
  ]);
  expect(planBy(cautionLaw, one).findings).toEqual([]);
  expect(planBy(cautionLaw, [{ species: potamotrygonMotoro, unsexed: 1 }]).findings.length).toBeGreaterThan(
    0,
  );
});

test("laws reach into the countries of their lawgiver: of the Union into its members, of CITES into its parties", () => {
  const union = { measures: { jurisdiction: { value: "European Union" } } };
  const convention = { measures: { jurisdiction: { value: "CITES" } } };
  expect(toldIn("germany", procambarusVirginalis)).toMatchObject([union]);
  expect(toldIn("switzerland", procambarusVirginalis)).not.toMatchObject([union]);
  for (const place of ["switzerland", "japan", "us-florida", "australia-queensland"] as const)
    expect(toldIn(place, hypancistrusZebra)).toMatchObject([convention]);
  expect(toldIn("germany", hypancistrusZebra)).toMatchObject([convention, {}]);
});

test("a tank of which no place is named is told how many laws there are, by an empty list too", () => {
  const counted = toldInAll(undefined, procambarusVirginalis);
  expect(counted).toMatchObject([{ measures: { laws: { value: procambarusVirginalis.listings?.length } } }]);
  expect(toldInAll([], procambarusVirginalis)).toEqual(counted);
});

test("a law that applies in two places of a plan is told once", () => {
  expect(toldInAll(["germany", "eu"], procambarusVirginalis)).toEqual(
    toldIn("germany", procambarusVirginalis),
  );
});
