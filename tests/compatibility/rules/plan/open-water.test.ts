import { expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import { openWater } from "../../../../src/compatibility/rules/plan/open-water";
import type { PlannedTank } from "../../../../src/plan";
import { animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const swimmer = animal("swimmer", { "space.openWater": 0.5 });
const inTank = (tank: Partial<PlannedTank>) =>
  weighed(planBy(openWater, [{ species: swimmer, unsexed: 1 }], { tank }));

test("a swimmer needs water without obstacles", () => {
  expect(inTank({ openWater: 0.49 })).toEqual({ findings: ["restricting"], met: [] });
  expect(inTank({ openWater: 0.5 })).toEqual({ findings: [], met: ["restricting"] });
});

test("where only the cover is given, the rest is open", () => {
  expect(inTank({ cover: 0.6 }).findings).toEqual(["restricting"]);
  expect(inTank({ cover: 0.5 }).met).toEqual(["restricting"]);
  expect(inTank({ cover: 0.4, openWater: 0.5 }).met).toEqual(["restricting"]);
  expect(() => inTank({ cover: 0.6, openWater: 0.6 })).toThrow("at most what cover leaves");
});

test("who needs none asks for none", () => {
  const crawler = animal("crawler", { "space.openWater": 0 });
  expect(weighed(planBy(openWater, [{ species: crawler, unsexed: 1 }]))).toEqual({ findings: [], met: [] });
});

test("in a keeper's tank: danios in a thicket", () => {
  const groups = [{ species: danioRerio, unsexed: 8 }];
  expect(planBy(openWater, groups, { tank: { cover: 0.8 } }).outcome).toBe("conditional");
});
