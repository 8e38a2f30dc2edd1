import { expect, test } from "vitest";
import andinoacaraPulcher from "vivary/catalog/andinoacara-pulcher";
import astronotusOcellatus from "vivary/catalog/astronotus-ocellatus";
import bettaSplendens from "vivary/catalog/betta-splendens";
import maylandiaEstherae from "vivary/catalog/maylandia-estherae";
import neolamprologusBrichardi from "vivary/catalog/neolamprologus-brichardi";
import potamotrygonMotoro from "vivary/catalog/potamotrygon-motoro";
import trichopodusLeerii from "vivary/catalog/trichopodus-leerii";
import xiphophorusMaculatus from "vivary/catalog/xiphophorus-maculatus";
import { assessPair, assessPlan } from "../../../src/compatibility";
import type { Group } from "../../../src/plan";
import { describe, reportParts } from "../../../src/report";
import type { SpeciesProfile } from "../../../src/species";

/** A report of two, on one line. */
const told = (a: SpeciesProfile, b: SpeciesProfile) =>
  describe(assessPair({ species: a }, { species: b })).replaceAll(/\s+/g, " ");

test("where one sex alone is eaten, the other is asked for, and from what length on they are too large", () => {
  const report = told(andinoacaraPulcher, xiphophorusMaculatus);
  expect(report.replaceAll(/\s+/g, " ")).toContain(
    "Keep female platies only. Blue acaras eat platies of 4 cm; those of at least 5.5 cm are too large",
  );
});

test("what is asked of both sides is told once", () => {
  const report = told(bettaSplendens, bettaSplendens);
  expect(report.match(/keep female Siamese fighting fish only/gi)).toHaveLength(1);
});

test("whoever is chased for good is told to have no way out", () => {
  const report = told(maylandiaEstherae, trichopodusLeerii);
  expect(report).toContain("chase pearl gouramis, which cannot get away from them");
});

test("no length is told of a small fish that is that of a large one beside it", () => {
  const inSmallTank = (...groups: readonly Group[]) =>
    describe(
      assessPlan({ tank: { base: { shape: "rectangle", length: 60, width: 47 } }, groups }),
    ).replaceAll(/\s+/g, " ");
  const ray = { species: potamotrygonMotoro, unsexed: 1 };
  const brood = { species: neolamprologusBrichardi, unsexed: 40 };
  const few = { ...brood, unsexed: 8 };
  expect(inSmallTank(ray, few)).toContain("too small for the ocellate river stingray: 60 cm long, it needs");
  expect(inSmallTank(ray, brood)).toContain(
    "too small for the ocellate river stingray and fairy cichlids: they need",
  );
});

test("of a tank that is far too small the size to have is told once, as why it will not do", () => {
  const groups = [{ species: astronotusOcellatus, unsexed: 2 }];
  const tank = { base: { shape: "rectangle", length: 40, width: 25 }, height: 30 } as const;
  const parts = reportParts(assessPlan({ tank, water: { temperature: 25 }, groups }));
  const telling = parts.filter(({ items }) => items.some((item) => item.includes("yours is 40 × 25 cm")));
  expect(telling.map(({ part }) => part)).toStrictEqual(["blocking"]);
});
