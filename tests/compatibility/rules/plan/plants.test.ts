import { expect, test } from "vitest";
import { plants } from "../../../../src/compatibility/rules/plan/plants";
import { animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const inTank = (grownInPlants: boolean, planted?: "none" | "planted" | "grown-in") =>
  planBy(
    plants,
    [{ species: animal("fish", { "space.grownInPlants": grownInPlants }), unsexed: 1 }],
    planted && { tank: { plants: planted } },
  );

test("who needs grown-in plants is not served by new ones", () => {
  expect(weighed(inTank(true, "grown-in"))).toEqual({ findings: [], met: ["restricting"] });
  expect(inTank(true, "planted").findings).toMatchObject([
    { weight: "restricting", condition: { on: "tank.plants", wanted: { oneOf: ["grown-in"] } } },
  ]);
  expect(weighed(inTank(true, "none")).findings).toEqual(["restricting"]);
});

test("who does not need them gets no advice", () => {
  expect(weighed(inTank(false, "none"))).toEqual({ findings: [], met: [] });
});

test("a plan that does not say leaves it open, and is held to it in both bounds", () => {
  const { bounds, open } = inTank(true);
  expect(bounds).toEqual({ atBest: "conditional", atWorst: "conditional" });
  expect(open).toMatchObject([{ on: "tank.plants", reason: "not-given" }]);
});
