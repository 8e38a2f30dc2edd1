import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import bettaSplendens from "vivary/catalog/betta-splendens";
import danioRerio from "vivary/catalog/danio-rerio";
import misgurnus from "vivary/catalog/misgurnus-anguillicaudatus";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import { assessPlan } from "../../../../src/compatibility";
import { season } from "../../../../src/compatibility/rules/pair/season";
import { coolSeason } from "../../../../src/compatibility/rules/plan/cool-season";
import type { PlannedWater } from "../../../../src/plan";
import { overlap } from "../../../../src/ranges";
import { factAt, type SpeciesProfile } from "../../../../src/species";
import { planBy, planOf } from "../../judging";

const kept = (water: PlannedWater, ...species: readonly SpeciesProfile[]) =>
  planBy(
    coolSeason,
    species.map((one) => ({ species: one, unsexed: 8 })),
    { water },
  );

test("water that never becomes cool is worth knowing for one that thrives with a cool season", () => {
  const warm = kept({ temperature: 22, coolest: 20 }, tanichthysAlbonubes);
  expect(warm).toMatchObject({
    outcome: "suitable",
    bounds: { atWorst: "suitable" },
    findings: [
      {
        weight: "advisory",
        from: 0,
        measures: { season: { min: 15, max: 18 } },
      },
    ],
    conditions: [],
    open: [],
  });
});

test("a plan that says no more than a warm temperature is told so too", () => {
  expect(kept({ temperature: 22 }, tanichthysAlbonubes).findings).toHaveLength(1);
});

test("a cool season is no matter, nor water that is as cool the year round, nor water nobody has measured", () => {
  for (const water of [{ temperature: 22, coolest: 17 }, { temperature: 18 }, { temperature: undefined }])
    expect(kept(water, tanichthysAlbonubes).findings).toEqual([]);
});

test("it is never advised where it would be too cool for another", () => {
  expect(kept({ temperature: 22, coolest: 20 }, tanichthysAlbonubes, bettaSplendens).findings).toEqual([]);
});

test("of a cool season as much is told as the others bear", () => {
  const { findings } = kept({ temperature: 22 }, tanichthysAlbonubes, danioRerio);
  expect(findings).toMatchObject([{ from: 0, measures: { season: { min: 18, max: 18 } } }]);
});

test("of two that need one, of each is told what both bear", () => {
  const { findings } = kept({ temperature: 22 }, misgurnus, tanichthysAlbonubes);
  expect(findings).toMatchObject([
    { from: 0, measures: { season: { min: 15, max: 15 } } },
    { from: 1, measures: { season: { min: 15, max: 18 } } },
  ]);
});

test("of any two that share water, either the plan or the pair tells of a cool season that one needs", () => {
  const needing = allSpecies.filter(
    (species) => (factAt(species, "water.coolSeason")?.value ?? "none") !== "none",
  );
  expect(needing.length).toBeGreaterThan(5);
  let sharing = 0;
  for (const species of needing)
    for (const other of allSpecies.filter(({ id }) => id !== species.id)) {
      const [own, theirs] = [species, other].map((one) => factAt(one, "water.temperature")?.value.kept);
      if (!own || !theirs || !overlap(own, theirs)) continue;
      sharing += 1;
      const groups = [species, other].map((one) => ({ species: one, unsexed: 8 }));
      const rules = [coolSeason, season];
      const { findings } = assessPlan(planOf(groups, { water: { temperature: 25 } }), { rules });
      expect(
        findings.filter(({ from }) => from === 0),
        `${species.id} ${other.id}`,
      ).toHaveLength(1);
    }
  expect(sharing).toBeGreaterThan(500);
});

test("where nobody states one, or it needs none, nothing is told and nothing stays open", () => {
  for (const species of [danioRerio, bettaSplendens]) {
    const { findings, open } = kept({ temperature: 27 }, species);
    expect([findings, open]).toEqual([[], []]);
  }
});
