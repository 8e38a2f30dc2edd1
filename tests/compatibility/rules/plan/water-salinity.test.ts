import { expect, test } from "vitest";
import brachygobiusDoriae from "vivary/catalog/brachygobius-doriae";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { waterSalinity } from "../../../../src/compatibility/rules/plan/water-salinity";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { type Changes, planBy, weighed } from "../../judging";

const inWater = (water: Changes["water"], more: Partial<Value<"water.salinity">> = {}) =>
  weighed(
    planBy(
      waterSalinity,
      [{ species: animal("fish", { "water.salinity": { kept: { min: 2, max: 10 }, ...more } }), unsexed: 1 }],
      water && { water },
    ),
  );

test("both ends of the kept span are in it", () => {
  for (const salinity of [2, 10]) {
    expect(inWater({ salinity })).toEqual({ findings: [], met: ["restricting"] });
  }
});

test("outside blocks, tolerated or not", () => {
  expect(inWater({ salinity: 1.9 }).findings).toEqual(["blocking"]);
  expect(inWater({ salinity: 1.9 }, { tolerated: { min: 0, max: 15 } }).findings).toEqual(["blocking"]);
});

test("water is fresh where the plan does not say, but blocks nothing before that is said", () => {
  expect(inWater({}).findings).toEqual(["restricting"]);
  expect(inWater({ salinity: 0 }).findings).toEqual(["blocking"]);
});

test("a bumblebee goby wants salt, a neon none", () => {
  const at = (species: typeof brachygobiusDoriae, salinity: number) =>
    planBy(waterSalinity, [{ species, unsexed: 8 }], { water: { salinity } }).outcome;
  expect(at(brachygobiusDoriae, 5)).toBe("suitable");
  expect(at(brachygobiusDoriae, 0)).toBe("unsuitable");
  expect(at(paracheirodonInnesi, 0)).toBe("suitable");
  expect(at(paracheirodonInnesi, 5)).toBe("unsuitable");
});
