import { expect, test } from "vitest";
import brachygobiusDoriae from "vivary/catalog/brachygobius-doriae";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import { salinity } from "../../../../src/compatibility/rules/pair/salinity";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy, weighed } from "../../judging";

const kept = (min: number, max: number, more: Partial<Value<"water.salinity">> = {}) => ({
  species: animal(`kept-${min}-${max}`, { "water.salinity": { kept: { min, max }, ...more } }),
});
const weights = (a: ReturnType<typeof kept>, b: ReturnType<typeof kept>) =>
  weighed(pairBy(salinity, a, b)).findings;

test("any share of salt is enough", () => {
  expect(weights(kept(0, 5), kept(2, 10))).toEqual(["favourable"]);
  expect(weights(kept(0, 0.5), kept(0.5, 10))).toEqual(["favourable"]);
});

test("where nothing is shared, nothing bridges fresh and brackish water", () => {
  expect(weights(kept(0, 0.5), kept(0.6, 10))).toEqual(["blocking"]);
  expect(weights(kept(0, 0.5), kept(2, 10, { tolerated: { min: 0, max: 20 } }))).toEqual(["blocking"]);
});

test("a guppy can live in a bumblebee goby's brackish water, a neon cannot", () => {
  expect(weights({ species: poeciliaReticulata }, { species: brachygobiusDoriae })).toEqual(["favourable"]);
  expect(weights({ species: paracheirodonInnesi }, { species: brachygobiusDoriae })).toEqual(["blocking"]);
});
