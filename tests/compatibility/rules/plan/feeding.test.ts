import { expect, test } from "vitest";
import brachygobiusDoriae from "vivary/catalog/brachygobius-doriae";
import pangioKuhlii from "vivary/catalog/pangio-kuhlii";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { assessPlan } from "../../../../src/compatibility";
import { feeding } from "../../../../src/compatibility/rules/plan/feeding";
import type { Offering } from "../../../../src/plan";
import type { SpeciesProfile } from "../../../../src/species";
import { planOf, weighed } from "../../judging";

const fed = (species: SpeciesProfile, offerings?: readonly Offering[]) =>
  weighed(
    assessPlan(
      { ...planOf([{ species, unsexed: 6 }]), ...(offerings && { offerings }) },
      { rules: [feeding] },
    ),
  );
const flakes: Offering = { food: "dry", place: "midwater" };

test("flakes by day feed neons", () => {
  expect(fed(paracheirodonInnesi)).toEqual({ findings: [], met: [] });
  expect(fed(paracheirodonInnesi, [flakes])).toEqual({ findings: [], met: ["restricting"] });
});

test("a kuhli loach feeds on the ground after dark", () => {
  const tablets = { food: "dry", place: "bottom" } as const;
  expect(fed(pangioKuhlii).findings).toEqual(["restricting"]);
  expect(fed(pangioKuhlii, [flakes, tablets]).findings).toEqual(["restricting"]);
  expect(fed(pangioKuhlii, [flakes, { ...tablets, light: "night" }]).met).toEqual(["restricting"]);
});

test("a bumblebee goby takes no dry food", () => {
  expect(fed(brachygobiusDoriae, [{ food: "dry", place: "bottom" }]).findings).toEqual(["restricting"]);
  expect(fed(brachygobiusDoriae, [{ food: "frozen", place: "bottom" }]).met).toEqual(["restricting"]);
});
