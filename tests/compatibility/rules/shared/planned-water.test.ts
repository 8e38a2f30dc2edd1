import { expect, test } from "vitest";
import { assessPlan } from "../../../../src/compatibility";
import { plannedWaterOf, plannedWaters } from "../../../../src/compatibility/rules/shared/planned-water";
import { animal } from "../../animals";

test("a finding about planned water is about the fact that it asks for, of a season too", () => {
  const species = animal("tetra", {
    "water.temperature": { kept: { min: 23, max: 26 } },
    "water.pH": { kept: { min: 6, max: 7 } },
    "water.generalHardness": { kept: { min: 2, max: 8 } },
    "water.salinity": { kept: { min: 0, max: 0 } },
  });
  const { findings } = assessPlan({
    tank: { base: { shape: "rectangle", length: 80, width: 35 } },
    water: { coolest: 10, temperature: 15, hottest: 40, pH: 9, generalHardness: 25, salinity: 10 },
    groups: [{ species, unsexed: 8 }],
  });
  const asked = findings.flatMap((finding) => {
    const { rule, weight } = finding;
    if (weight !== "restricting" || !Object.hasOwn(plannedWaters, rule)) return [];
    const about = plannedWaterOf(finding as Parameters<typeof plannedWaterOf>[0]);
    return [[about, finding.condition.on]];
  });
  expect(asked.map(([about]) => about)).toEqual(asked.map(([, on]) => on));
  expect(asked.map(([about]) => about).sort()).toEqual([
    "water.coolest",
    "water.generalHardness",
    "water.hottest",
    "water.pH",
    "water.salinity",
    "water.temperature",
  ]);
});
