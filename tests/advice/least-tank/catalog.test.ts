import { describe, expect, test } from "vitest";
import { leastTank, standardTanks } from "../../../src/advice";
import { speciesById } from "../../../src/catalog";
import { assessPlan } from "../../../src/compatibility";
import type { Group } from "../../../src/plan";
import { type TankDimensions, tankGeometry } from "../../../src/tank";

const catalogued = (id: string, unsexed: number): Group => ({
  species: speciesById(id) ?? expect.fail(`no ${id}`),
  unsexed,
});

describe("for animals of the catalog", () => {
  const companies: readonly (readonly Group[])[] = [
    [catalogued("danio-rerio", 10)],
    [catalogued("paracheirodon-innesi", 10), catalogued("hoplisoma-panda", 6)],
    [catalogued("astronotus-ocellatus", 2)],
    [catalogued("betta-splendens", 1)],
  ];

  test.each(companies)("the plan is suitable, and in no smaller standard tank it is: %#", (...groups) => {
    const found = leastTank(groups);
    expect(found.length).toBeGreaterThan(0);
    for (const { plan, base, height: high, measured, glass, limitedBy } of found) {
      expect(assessPlan(plan).outcome).toBe("suitable");
      expect(plan.tank).toMatchObject({ base, height: high, measured, glass });
      const { footprint: floor, longestRun: run, width } = tankGeometry({ ...plan.tank, height: high });
      const isThis = (tank: TankDimensions) =>
        JSON.stringify(tank.base) === JSON.stringify(base) && tank.height === high;
      const smaller = standardTanks.filter((tank) => {
        const other = tankGeometry(tank);
        const fits = other.footprint <= floor && other.longestRun <= run && other.width <= width;
        return fits && tank.height <= high && !isThis(tank);
      });
      for (const tank of smaller)
        expect(assessPlan({ ...plan, tank: { ...plan.tank, ...tank } }).outcome).not.toBe("suitable");
      expect(limitedBy.length > 0).toBe(smaller.length > 0);
    }
  });

  test("the weight of a large one on the floor is told", () => {
    const [large] = leastTank([catalogued("astronotus-ocellatus", 2)]);
    expect(large?.caution).toMatchObject({ rule: "caution-floor", weight: "advisory" });
    const [small] = leastTank([catalogued("betta-splendens", 1)]);
    expect(small).not.toHaveProperty("caution");
  });
});
