import { expect, test } from "vitest";
import caridinaLogemanni from "vivary/catalog/caridina-logemanni";
import danioRerio from "vivary/catalog/danio-rerio";
import tropheusDuboisi from "vivary/catalog/tropheus-duboisi";
import { carbonateHardness } from "../../../../src/compatibility/rules/plan/carbonate-hardness";
import type { SpeciesProfile } from "../../../../src/species";
import { planBy } from "../../judging";

const at = (species: SpeciesProfile, hardness?: number) =>
  planBy(carbonateHardness, [{ species, unsexed: 10 }], { water: { carbonateHardness: hardness } });

test("a carbonate hardness outside what it is kept in is worth knowing, and changes no outcome", () => {
  expect(at(caridinaLogemanni, 8)).toMatchObject({
    outcome: "suitable",
    bounds: { atWorst: "suitable" },
    findings: [{ weight: "advisory", measures: { kept: { max: 2 }, planned: { value: 8 } } }],
    conditions: [],
  });
  expect(at(tropheusDuboisi, 3).findings).toHaveLength(1);
});

test("one within it is no matter, and so is one that the plan does not say", () => {
  for (const hardness of [0, 2, undefined]) {
    const { findings, open } = at(caridinaLogemanni, hardness);
    expect([findings, open]).toEqual([[], []]);
  }
  expect(at(tropheusDuboisi, 12).findings).toEqual([]);
});

test("where nobody states one, nothing is told and nothing stays open", () => {
  const { findings, open } = at(danioRerio, 20);
  expect([findings, open]).toEqual([[], []]);
});
