import { expect, test } from "vitest";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import neocaridinaDavidi from "vivary/catalog/neocaridina-davidi";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import { filterNitrogen } from "../../../../src/compatibility/rules/plan/filter-nitrogen";
import type { Group, PlannedTank } from "../../../../src/plan";
import { adults, animal } from "../../animals";
import { findingsOf, planBy, weighed } from "../../judging";

const judged = (groups: readonly Group[], filter?: PlannedTank["filter"]) =>
  planBy(filterNitrogen, groups, { tank: { filter } });

/** Half a gram, as a zebrafish. */
const small = animal("small", { "size.adultLength": adults(5), "size.lengthWeight": { a: 0.004, b: 3 } });
const twenty = [{ species: small, unsexed: 20 }];

// 0.5 g fed 3 % of its mass is 15 mg of food a day, with 40 % protein 0.015 × 0.4 × 92 = 0.552 mg of ammonia nitrogen;
// twenty give off 11.04 mg a day, for which media at the middle of 20 and 100 mg/(m² d), which is 44.7, need 0.247 m².
test("ripe media take up what the stock gives off", () => {
  const [finding] = findingsOf(judged(twenty), "filter-nitrogen");
  expect(finding?.measures?.nitrogen).toEqual({ value: expect.closeTo(11.04, 2), unit: "mg/d" });
  expect(weighed(judged(twenty, { mediaArea: 0.248, age: 56 }))).toEqual({
    findings: [],
    met: ["restricting"],
  });
  expect(weighed(judged(twenty, { mediaArea: 0.246, age: 56 }))).toEqual({
    findings: ["restricting"],
    met: [],
  });
});

test("an unripe filter takes up nothing that one can rely on", () => {
  expect(weighed(judged(twenty, { mediaArea: 50, age: 55 })).findings).toEqual(["restricting"]);
});

test("what the plan does not say of its filter stays a condition", () => {
  expect(judged(twenty).open).toMatchObject([{ on: "tank.filter.ripeArea", reason: "not-given" }]);
});

test("shrimps and snails are not weighed", () => {
  expect(judged([{ species: neocaridinaDavidi, unsexed: 50 }]).findings).toEqual([]);
});

test("in a keeper's tank: a litre of foam is plenty for neons and too little for goldfish", () => {
  const foam = { mediaArea: 1.2, age: 90 };
  expect(judged([{ species: paracheirodonInnesi, unsexed: 15 }], foam).outcome).toBe("suitable");
  expect(judged([{ species: carassiusAuratus, unsexed: 3 }], foam).outcome).toBe("conditional");
});
