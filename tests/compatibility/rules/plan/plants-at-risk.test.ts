import { expect, test } from "vitest";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import labidochromisCaeruleus from "vivary/catalog/labidochromis-caeruleus";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { plantsAtRisk } from "../../../../src/compatibility/rules/plan/plants-at-risk";
import type { PlannedTank } from "../../../../src/plan";
import type { SpeciesProfile } from "../../../../src/species";
import { animal } from "../../animals";
import { findingsOf, planBy, weighed } from "../../judging";

const fish = (does: "eatsPlants" | "uproots" | "digs" | "nothing") =>
  animal("fish", {
    "effects.eatsPlants": does === "eatsPlants",
    "effects.uproots": does === "uproots",
    "effects.digs": does === "digs",
  });
const among = (species: SpeciesProfile, plants?: PlannedTank["plants"]) =>
  weighed(planBy(plantsAtRisk, [{ species, unsexed: 2 }], { tank: { plants } }));

test("plants do not last with fish that eat them or pull them out: a loss that harms no animal", () => {
  for (const does of ["eatsPlants", "uproots"] as const) {
    for (const plants of ["planted", "grown-in", undefined] as const)
      expect(among(fish(does), plants)).toEqual({ findings: ["advisory"], met: [] });
    expect(among(fish(does), "none")).toEqual({ findings: [], met: [] });
  }
});

test("the finding says which", () => {
  const does = (what: "eatsPlants" | "uproots") =>
    planBy(plantsAtRisk, [{ species: fish(what), unsexed: 2 }], { tank: { plants: "planted" } }).findings;
  expect(does("eatsPlants")).toMatchObject([{ measures: { harm: { value: "eats" } } }]);
  expect(does("uproots")).toMatchObject([{ measures: { harm: { value: "uproots" } } }]);
});

test("digging is worth knowing where there are plants", () => {
  expect(among(fish("digs"), "grown-in").findings).toEqual(["advisory"]);
  expect(among(fish("digs"), "none")).toEqual({ findings: [], met: [] });
});

test("in a keeper's tank: goldfish eat plants, yellow cichlids dig, neons do neither", () => {
  const harm = (species: SpeciesProfile) =>
    findingsOf(
      planBy(plantsAtRisk, [{ species, unsexed: 2 }], { tank: { plants: "planted" } }),
      "plants-at-risk",
    ).map(({ measures }) => measures?.harm?.value);
  expect(harm(carassiusAuratus)).toEqual(["eats"]);
  expect(harm(labidochromisCaeruleus)).toEqual(["digs"]);
  expect(among(paracheirodonInnesi, "planted")).toEqual({ findings: [], met: [] });
});
