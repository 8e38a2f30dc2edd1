import { expect, test } from "vitest";
import labidochromisCaeruleus from "vivary/catalog/labidochromis-caeruleus";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { waterPh } from "../../../../src/compatibility/rules/plan/water-ph";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const verdictIn = (pH: number, more: Partial<Value<"water.pH">> = {}) =>
  planBy(
    waterPh,
    [{ species: animal("fish", { "water.pH": { kept: { min: 6, max: 7.2 }, ...more } }), unsexed: 1 }],
    { water: { pH } },
  );
const inWater = (...given: Parameters<typeof verdictIn>) => weighed(verdictIn(...given));

test("both ends of the kept span are in it", () => {
  for (const pH of [6, 7.2]) expect(inWater(pH)).toEqual({ findings: [], met: ["restricting"] });
});

test("each end gives way by a quarter, a handbook's class by a half", () => {
  for (const pH of [5.75, 7.45])
    expect(inWater(pH)).toEqual({ findings: ["advisory"], met: ["restricting"] });
  for (const pH of [5.74, 7.46]) expect(inWater(pH).findings).toEqual(["restricting"]);
  const precision = { min: "class", max: "class" } as const;
  for (const pH of [5.5, 7.7]) expect(inWater(pH, { precision }).findings).toEqual(["advisory"]);
  expect(inWater(7.71, { precision }).findings).toEqual(["restricting"]);
});

test("outside that it restricts however far out, and aims at what the animal is kept in", () => {
  for (const pH of [4, 9]) {
    expect(verdictIn(pH).findings).toMatchObject([
      {
        weight: "restricting",
        condition: { on: "water.pH", wanted: { min: 5.75, max: 7.45 }, aim: { min: 6, max: 7.2 } },
      },
    ]);
  }
});

test("a limit does not give way, and is told where it is passed", () => {
  const limit = { max: 7.3 };
  expect(inWater(7.3, { limit }).findings).toEqual(["advisory"]);
  expect(verdictIn(7.4, { limit }).findings).toMatchObject([
    { weight: "restricting", condition: { wanted: { max: 7.3 } }, measures: { limit: { max: 7.3 } } },
  ]);
});

test("the alkaline water of a yellow lab is no neon's", () => {
  const water = { pH: 8.4 };
  expect(planBy(waterPh, [{ species: labidochromisCaeruleus, unsexed: 1 }], { water }).outcome).toBe(
    "suitable",
  );
  expect(planBy(waterPh, [{ species: paracheirodonInnesi, unsexed: 1 }], { water }).outcome).toBe(
    "conditional",
  );
});
