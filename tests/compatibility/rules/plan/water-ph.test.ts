import { expect, test } from "vitest";
import labidochromisCaeruleus from "vivary/catalog/labidochromis-caeruleus";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { waterPh } from "../../../../src/compatibility/rules/plan/water-ph";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const inWater = (pH: number, more: Partial<Value<"water.pH">> = {}) =>
  weighed(
    planBy(
      waterPh,
      [{ species: animal("fish", { "water.pH": { kept: { min: 6, max: 7.2 }, ...more } }), unsexed: 1 }],
      { water: { pH } },
    ),
  );

test("both ends of the kept span are in it", () => {
  for (const pH of [6, 7.2]) expect(inWater(pH)).toEqual({ findings: [], met: ["restricting"] });
});

test("less than one pH outside restricts, one blocks", () => {
  expect(inWater(5.01).findings).toEqual(["restricting"]);
  expect(inWater(5).findings).toEqual(["blocking"]);
  expect(inWater(8.19).findings).toEqual(["restricting"]);
});

test("8.2 is one pH above 7.2", () => {
  expect(inWater(8.2).findings).toEqual(["blocking"]);
});

test("a best span in place of a kept one restricts at most, a limit blocks", () => {
  expect(inWater(9, { standIn: true }).findings).toEqual(["restricting"]);
  expect(inWater(7.4, { limit: { max: 7.3 } }).findings).toEqual(["blocking"]);
});

test("the alkaline water of a yellow lab is no neon's", () => {
  const water = { pH: 8.4 };
  expect(planBy(waterPh, [{ species: labidochromisCaeruleus, unsexed: 1 }], { water }).outcome).toBe(
    "suitable",
  );
  expect(planBy(waterPh, [{ species: paracheirodonInnesi, unsexed: 1 }], { water }).outcome).toBe(
    "unsuitable",
  );
});
