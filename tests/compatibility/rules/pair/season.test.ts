import { expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import misgurnusAnguillicaudatus from "vivary/catalog/misgurnus-anguillicaudatus";
import poeciliaLatipinna from "vivary/catalog/poecilia-latipinna";
import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
import { season } from "../../../../src/compatibility/rules/pair/season";
import { applyForm, type SpeciesProfile } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy } from "../../judging";

const told = (a: SpeciesProfile, b: SpeciesProfile) =>
  pairBy(season, { species: a }, { species: b }).findings.map(({ from, weight }) => [from, weight]);

test("who needs a cool season goes without beside what would be too cold then", () => {
  const { outcome, findings } = pairBy(season, { species: carassiusAuratus }, { species: poeciliaLatipinna });
  expect(outcome).toBe("suitable");
  expect(findings).toMatchObject([
    { weight: "advisory", from: 0, to: 1, measures: { season: { min: 4, max: 12 } } },
  ]);
  expect(told(poeciliaLatipinna, carassiusAuratus)).toEqual([[1, "advisory"]]);
});

test("nothing is told of one that bears the cool season, nor of the form that needs none", () => {
  expect(told(carassiusAuratus, misgurnusAnguillicaudatus)).toEqual([]);
  expect(told(applyForm(carassiusAuratus, "fantail"), poeciliaLatipinna)).toEqual([]);
  expect(told(bettaSplendens, poeciliaLatipinna)).toEqual([]);
});

test("nothing is told of two that share no water at any time", () => {
  expect(told(tanichthysAlbonubes, bettaSplendens)).toEqual([]);
});

test("the cool season need only reach what the other is kept in", () => {
  const needs = animal("needs", {
    "water.temperature": { kept: { min: 15, max: 24 } },
    "water.coolSeason": { min: 15, max: 18 },
  });
  const keptFrom = (min: number) => animal("other", { "water.temperature": { kept: { min, max: 26 } } });
  expect(told(needs, keptFrom(18))).toEqual([]);
  expect(told(needs, keptFrom(18.5))).toEqual([[0, "advisory"]]);
});
