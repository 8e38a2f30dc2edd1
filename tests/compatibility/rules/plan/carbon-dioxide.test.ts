import { expect, test } from "vitest";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { assessPlan } from "../../../../src/compatibility";
import { carbonDioxide } from "../../../../src/compatibility/rules/plan/carbon-dioxide";
import type { PlannedWater } from "../../../../src/plan";
import { findingsOf, planBy } from "../../judging";

/** What the rule says of water, with the carbon dioxide that it tells of, mg/L. */
function told(water: PlannedWater) {
  const verdict = planBy(carbonDioxide, [{ species: paracheirodonInnesi, unsexed: 10 }], { water });
  return findingsOf(verdict, "carbon-dioxide").map(({ weight, watchFor, measures }) => [
    weight,
    watchFor,
    measures?.dissolved,
  ]);
}

const milligrams = (value: number) => [["advisory", "gasping", { value, unit: "mg/L" }]];

test("carbon dioxide past the limit is told, and no more than two figures of it", () => {
  // Plummer & Busenberg 1982 at 25 °C and zero ionic strength: 4 °dH hold 14.1 mg/L at pH 7 and 44.6 at pH 6.5; 10 °dH
  // hold 35.3 at pH 7 and 11.1 at pH 7.5.
  const water = { temperature: 25 };
  expect(told({ ...water, pH: 7, carbonateHardness: 4 })).toEqual([]);
  expect(told({ ...water, pH: 6.5, carbonateHardness: 4 })).toEqual(milligrams(45));
  expect(told({ ...water, pH: 7, carbonateHardness: 10 })).toEqual(milligrams(35));
  expect(told({ ...water, pH: 7.5, carbonateHardness: 10 })).toEqual([]);
});

test("water of which nobody says how warm it is counts as of 25 °C", () => {
  expect(told({ pH: 6.5, carbonateHardness: 4 })).toEqual(milligrams(45));
});

test("water harder or more acid than the equation holds for has at least what it has at the limit", () => {
  const [[, , hardest] = []] = told({ pH: 6, carbonateHardness: 60 });
  expect(hardest).toEqual(told({ pH: 6, carbonateHardness: 30 })[0]?.[2]);
  expect(told({ pH: 4, carbonateHardness: 1 })).toHaveLength(1);
  expect(told({ pH: 11, carbonateHardness: 10 })).toEqual([]);
});

test("nothing is told where a figure is not said, nor of brackish water, for which the equation does not hold", () => {
  expect(told({ pH: 6 })).toEqual([]);
  expect(told({ pH: undefined, carbonateHardness: 10 })).toEqual([]);
  expect(told({ pH: 6.5, carbonateHardness: 10, salinity: 3 })).toEqual([]);
});

test("in a keeper's tank: neons at pH 6.4 beside a carbonate hardness of 10 °dH", () => {
  const tank = { base: { shape: "rectangle", length: 100, width: 40 } } as const;
  const water = { temperature: 24, pH: 6.4, generalHardness: 8, carbonateHardness: 10 };
  const groups = [{ species: paracheirodonInnesi, unsexed: 12 }];
  expect(findingsOf(assessPlan({ tank, water, groups }), "carbon-dioxide")).toHaveLength(1);
});
