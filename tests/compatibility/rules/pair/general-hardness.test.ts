import { expect, test } from "vitest";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import paracheirodonAxelrodi from "vivary/catalog/paracheirodon-axelrodi";
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

test("two degrees shared are room to spare, less restricts, and aims at what is shared", () => {
  expect(weights(kept(2, 10), kept(8, 20))).toEqual(["favourable"]);
  expect(beside(kept(2, 10), kept(8.5, 20)).findings).toMatchObject([
    {
      weight: "restricting",
      condition: {
        on: "water.generalHardness",
        wanted: { min: 6.5, max: 12 },
        aim: { min: 8.5, max: 10 },
      },
    },
  ]);
});

test("each end gives way by two degrees, a class perhaps by four; less than one degree cannot be held", () => {
  expect(weights(kept(0, 2), kept(4, 20))).toEqual(["restricting"]);
  expect(weights(kept(0, 2), kept(5, 20))).toEqual(["advisory"]);
  expect(weights(kept(0, 2), kept(5.1, 20))).toEqual(["blocking"]);
  expect(weights(kept(0, 2, { precision: { max: "class" } }), kept(7, 20))).toEqual(["advisory"]);
  expect(weights(kept(0, 2, { precision: { max: "class" } }), kept(7.1, 20))).toEqual(["blocking"]);
  expect(beside(kept(0, 2), kept(30, 50)).outcome).toBe("unsuitable");
});

test("water is never softer than without any lime", () => {
  expect(beside(kept(0, 4), kept(3, 20)).findings).toMatchObject([
    { condition: { wanted: { min: 1, max: 6 } } },
  ]);
  expect(beside(kept(0, 1), kept(1, 2)).findings).toMatchObject([
    { condition: { wanted: { min: 0, max: 3 } } },
  ]);
});

test("a limit is never passed", () => {
  expect(weights(kept(0, 2, { limit: { max: 3 } }), kept(5, 20))).toEqual(["blocking"]);
});

test("a tank at what both can be given meets the condition", () => {
  const groups = [kept(2, 10), kept(9, 20)].map((group) => ({ ...group, unsexed: 1 }));
  const at = (hardness: number) =>
    weighed(planBy(generalHardness, groups, { water: { generalHardness: hardness } }));
  expect(at(7)).toEqual({ findings: [], met: ["restricting"] });
  expect(at(12)).toEqual({ findings: [], met: ["restricting"] });
  expect(at(12.1)).toEqual({ findings: ["restricting"], met: [] });
});

test("a cory gets on with a swordtail's hard water, a cardinal hardly", () => {
  expect(weights({ species: osteogasterAenea }, { species: xiphophorusHellerii })).toEqual(["favourable"]);
  expect(weights({ species: paracheirodonAxelrodi }, { species: xiphophorusHellerii })).toEqual([
    "restricting",
  ]);
});
