import { expect, test } from "vitest";
import potamotrygonMotoro from "vivary/catalog/potamotrygon-motoro";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import { cover } from "../../../../src/compatibility/rules/plan/cover";
import { animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const hider = animal("hider", { "space.cover": 0.4 });
const inTank = (share?: number, species = hider) =>
  planBy(cover, [{ species, unsexed: 1 }], share === undefined ? {} : { tank: { cover: share } });

test("as much cover as it needs is enough", () => {
  expect(weighed(inTank(0.4))).toEqual({ findings: [], met: ["restricting"] });
  expect(inTank(0.39).findings).toMatchObject([
    { weight: "restricting", condition: { on: "tank.cover", wanted: { min: 0.4 } }, watchFor: "hiding" },
  ]);
});

test("who needs none gets no advice", () => {
  expect(weighed(inTank(0, animal("open", { "space.cover": 0 })))).toEqual({ findings: [], met: [] });
});

test("a plan that does not say leaves it open, and is held to it in both bounds", () => {
  const { outcome, bounds, open } = inTank();
  expect(outcome).toBe("conditional");
  expect(bounds).toEqual({ atBest: "conditional", atWorst: "conditional" });
  expect(open).toEqual([{ rule: "cover", on: "tank.cover", reason: "not-given", couldBe: "restricting" }]);
});

test("a honey gourami hides in a bare tank, a stingray needs the floor free", () => {
  expect(inTank(0, trichogasterChuna).outcome).toBe("conditional");
  expect(inTank(0.4, trichogasterChuna).outcome).toBe("suitable");
  expect(inTank(0, potamotrygonMotoro).outcome).toBe("suitable");
});
