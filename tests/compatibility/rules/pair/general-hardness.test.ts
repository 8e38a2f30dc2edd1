import { expect, test } from "vitest";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import xiphophorusHellerii from "vivary/catalog/xiphophorus-hellerii";
import { generalHardness } from "../../../../src/compatibility/rules/pair/general-hardness";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

const kept = (min: number, max: number, more: Partial<Value<"water.generalHardness">> = {}) => ({
  species: animal(`kept-${min}-${max}`, { "water.generalHardness": { kept: { min, max }, ...more } }),
});
const beside = (a: ReturnType<typeof kept>, b: ReturnType<typeof kept>) => pairBy(generalHardness, a, b);
const weights = (a: ReturnType<typeof kept>, b: ReturnType<typeof kept>) => weighed(beside(a, b)).findings;

test("two degrees shared are room to spare, less is not", () => {
  expect(weights(kept(2, 10), kept(8, 20))).toEqual(["favourable"]);
  expect(beside(kept(2, 10), kept(8.5, 20)).findings).toMatchObject([
    { weight: "restricting", condition: { on: "water.generalHardness", wanted: { min: 8.5, max: 10 } } },
  ]);
});

test("no gap blocks, however wide", () => {
  expect(beside(kept(0, 2), kept(30, 50)).findings).toMatchObject([
    { weight: "restricting", condition: { on: "water.generalHardness", wanted: { min: 2, max: 30 } } },
  ]);
  expect(beside(kept(0, 2), kept(30, 50)).bounds.atWorst).toBe("conditional");
});

test("water past the other's limit blocks", () => {
  expect(weights(kept(0, 2, { limit: { max: 20 } }), kept(30, 50))).toEqual(["blocking"]);
});

test("a tank at the shared hardness meets the condition", () => {
  const groups = [kept(2, 10), kept(9, 20)].map((group) => ({ ...group, unsexed: 1 }));
  const at = (hardness: number) =>
    weighed(planBy(generalHardness, groups, { water: { generalHardness: hardness } }));
  expect(at(9.5)).toEqual({ findings: [], met: ["restricting"] });
  expect(at(12)).toEqual({ findings: ["restricting"], met: [] });
});

test("a cory gets on with a swordtail's hard water, a neon hardly", () => {
  expect(weights({ species: osteogasterAenea }, { species: xiphophorusHellerii })).toEqual(["favourable"]);
  expect(weights({ species: paracheirodonInnesi }, { species: xiphophorusHellerii })).toEqual([
    "restricting",
  ]);
});
