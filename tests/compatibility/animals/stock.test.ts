import { describe, expect, test } from "vitest";
import { assessPlan, defineRule, type Stock, weighing } from "../../../src/compatibility";
import { nitrogenOf, oxygenDemandOf } from "../../../src/compatibility/animals/stock";
import { subjectOf } from "../../../src/compatibility/engine/sides/subject";
import { bodyMass } from "../../../src/load";
import type { Group } from "../../../src/plan";
import { partiesOfGroups } from "../../../src/plan/party";
import { adults, animal, type Stated } from "../animals";
import { planOf } from "../judging";

const stocks = (...groups: readonly Group[]) => weighing.ends(partiesOfGroups(groups).map(subjectOf));
const masses = (...groups: readonly Group[]) =>
  stocks(...groups).map(({ end, animals }) => [end, animals.map(({ mass }) => mass)]);

const fish = (stated: Stated, also: readonly Stated[] = []) => animal("fish", stated, { also });
const weighed = { "size.adultLength": adults(10), "size.lengthWeight": { a: 0.01, b: 3 } } as const;

describe("the fish of a plan by mass", () => {
  test("are the likely ones first, then the lightest and the heaviest they may be", () => {
    const { typical, likely } = bodyMass({ length: 10, shape: "fusiform" });
    const species = fish({ "size.adultLength": adults(10), "size.bodyShape": "fusiform" });
    expect(masses({ species, unsexed: 1 })).toEqual([
      ["likely", [typical]],
      ["least", [likely.min]],
      ["greatest", [likely.max]],
    ]);
  });

  test("by every length and weight that a source supports", () => {
    const species = fish(weighed, [
      { "size.adultLength": adults(20), "size.lengthWeight": { a: 0.02, b: 3 } },
    ]);
    // 0.01 × 10³ = 10 g, up to 0.02 × 20³ = 160 g.
    expect(masses({ species, unsexed: 1 })).toEqual([
      ["likely", [10]],
      ["least", [10]],
      ["greatest", [160]],
    ]);
  });

  test("count as grown, in their numbers; shrimps are not weighed", () => {
    const shrimp = animal("shrimp", { "size.adultLength": adults(3) }, { kind: "shrimp" });
    const [likely] = stocks(
      { species: fish(weighed), juveniles: 3, length: 2 },
      { species: shrimp, unsexed: 50 },
    );
    expect(likely?.animals).toEqual([{ mass: 10, count: 3 }]);
  });

  test("are none for a rule that does not weigh", () => {
    const seen: Stock[] = [];
    const looks = (id: string, weighs: boolean) =>
      defineRule({
        id,
        way: "once",
        ...(weighs && { sums: weighing }),
        mayYield: ["advisory"],
        judge: ({ stock }) => {
          seen.push(stock);
          return [];
        },
      });
    const plan = planOf([{ species: fish(weighed), unsexed: 1 }]);
    assessPlan(plan, { rules: [looks("x-looks", false)] });
    expect(seen).toEqual([{ end: "likely", animals: [] }]);
    assessPlan(plan, { rules: [looks("x-weighs", true)] });
    expect(seen.slice(1).map(({ end }) => end)).toEqual(["likely", "least", "greatest"]);
  });
});

test("the lightest stock rests and is fed for upkeep, the others go about and are fed plenty", () => {
  const [likely, least, greatest] = stocks({ species: fish(weighed), unsexed: 2 });
  if (!likely || !least || !greatest) throw new Error("three stocks");
  // At 24 °C a fish of 10 g uses 2.676 mg/h at rest (Clarke & Johnston 1999), 560/364 of it in a group.
  expect(oxygenDemandOf(least, 24)).toBeCloseTo(2 * 2.676, 2);
  expect(oxygenDemandOf(likely, 24)).toBeCloseTo((2 * 2.676 * 560) / 364, 2);
  expect(oxygenDemandOf(greatest, 24)).toBe(oxygenDemandOf(likely, 24));
  expect(nitrogenOf(least)).toBeLessThan(nitrogenOf(likely) / 2);
  expect(nitrogenOf(greatest)).toBe(nitrogenOf(likely));
});
