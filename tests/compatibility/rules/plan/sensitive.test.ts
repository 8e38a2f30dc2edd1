import { expect, test } from "vitest";
import { sensitive } from "../../../../src/compatibility/rules/plan/sensitive";
import type { PlannedWater } from "../../../../src/plan";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { planBy } from "../../judging";

const told = (value: Value<"care.sensitive">) =>
  planBy(sensitive, [{ species: animal("shrimp", { "care.sensitive": value }), unsexed: 10 }]);

test("each thing that harms it sooner is worth knowing, and changes no outcome", () => {
  expect(told(["copper", "salt"])).toMatchObject({
    outcome: "suitable",
    findings: [
      { weight: "advisory", from: 0, measures: { to: { value: "copper" } } },
      { weight: "advisory", from: 0, measures: { to: { value: "salt" } } },
    ],
  });
  expect(told([]).findings).toEqual([]);
});

test("soft, acid water is a matter only where the plan has it, or does not say", () => {
  const species = animal("shrimp", {
    "care.sensitive": ["soft-water", "copper"],
    "water.pH": { kept: { min: 6.5, max: 8 } },
    "water.generalHardness": { kept: { min: 4, max: 15 } },
  });
  const toldIn = (water: PlannedWater, kind = species) =>
    planBy(sensitive, [{ species: kind, unsexed: 10 }], { water }).findings.map(({ measures }) => measures);
  const [soft, copper] = [{ to: { value: "soft-water" } }, { to: { value: "copper" } }];
  expect(toldIn({ pH: 7, generalHardness: 8 })).toEqual([copper]);
  expect(toldIn({ pH: 6.4, generalHardness: 8 })).toEqual([soft, copper]);
  expect(toldIn({ pH: 7, generalHardness: 3 })).toEqual([soft, copper]);
  expect(toldIn({ pH: undefined, generalHardness: 8 })).toEqual([soft, copper]);
  expect(toldIn({}, animal("shrimp", { "care.sensitive": ["soft-water"] }))).toEqual([soft]);
});
