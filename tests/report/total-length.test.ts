import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import { english, speciesPage } from "../../src/report";
import { sizeRows } from "../../src/report/pictures/size-chart/size-rows";
import { quantityWriter } from "../../src/report/quantities";
import { totalOf } from "../../src/report/total-length";
import type { AdultLength } from "../../src/species";

const measured: AdultLength = { length: 5, measure: "TL", as: "usual", total: { min: 5, max: 5 } };
const reckoned: AdultLength = { length: 4.5, measure: "SL", as: "usual", total: { min: 5.3, max: 5.6 } };

test("a measured total is told rather than a reckoned one, and a sex by its own lengths", () => {
  expect(totalOf([measured, reckoned], "usual", undefined)).toEqual({ min: 5, max: 5, ofEither: false });
  expect(totalOf([reckoned], "usual", undefined)).toEqual({ min: 5.3, max: 5.6, ofEither: false });
  expect(totalOf([measured, { ...reckoned, sex: "male" }], "usual", "male")).toMatchObject({ max: 5.6 });
  expect(totalOf([measured], "usual", "male")).toMatchObject({ max: 5, ofEither: true });
  expect(totalOf([measured], "greatest", undefined)).toBeUndefined();
});

test("the page of a species and the chart of sizes tell the same usual lengths", () => {
  const write = quantityWriter(english, "metric");
  let compared = 0;
  for (const profile of allSpecies) {
    const page = speciesPage(profile).replaceAll(/\s+/g, " ");
    for (const { onlyGreatest, drawn } of sizeRows(profile, english, write)) {
      if (onlyGreatest || !drawn) continue;
      expect(page, profile.id).toContain(write({ min: drawn.min, max: drawn.max, unit: "cm" }));
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(100);
});
