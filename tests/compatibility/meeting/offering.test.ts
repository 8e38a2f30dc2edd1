import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import oscar from "vivary/catalog/astronotus-ocellatus";
import vampireShrimp from "vivary/catalog/atya-gabonensis";
import leopardBushfish from "vivary/catalog/ctenopoma-acutirostre";
import severum from "vivary/catalog/heros-severus";
import { feedingPlan } from "../../../src/advice";
import { pairPlan, witness } from "../../../src/compatibility";
import { roomy } from "../../../src/compatibility/inner";
import type { Offering, Plan } from "../../../src/plan";
import type { SpeciesProfile } from "../../../src/species";

const told = ({ offerings = [] }: { readonly offerings?: readonly Offering[] | undefined }) =>
  offerings.map(({ food, place, light = "day", apart = false }) => ({ food, place, light, apart }));

const bare = (species: SpeciesProfile): Plan => ({ tank: roomy, groups: [{ species, unsexed: 8 }] });

test("each species is fed, where its keeper said nothing that will do, as the feeding plan feeds it", () => {
  let looked = 0;
  for (const species of allSpecies) {
    const found = witness(bare(species));
    if (!found?.offerings) continue;
    looked += 1;
    const planned = told(feedingPlan(bare(species)));
    for (const one of told(found))
      expect([species.id, planned]).toEqual([species.id, expect.arrayContaining([one])]);
  }
  expect(looked).toBeGreaterThan(10);
});

test("hunters get frozen food, not live fish, and shrimps that sift the water dry food", () => {
  expect(witness(bare(leopardBushfish))?.offerings).toMatchObject([{ food: "frozen" }]);
  expect(witness(bare(vampireShrimp))?.offerings).toMatchObject([{ food: "dry", light: "dusk" }]);
});

test("slow eaters beside fast ones get their whole diet as well", () => {
  const foods = (one: SpeciesProfile, other: SpeciesProfile) =>
    pairPlan({ species: one }, { species: other })?.offerings?.map(({ food }) => food);
  for (const other of allSpecies) {
    expect(foods(oscar, other) ?? []).not.toContain("fish");
    expect(foods(severum, other) ?? []).not.toContain("plants");
  }
});
