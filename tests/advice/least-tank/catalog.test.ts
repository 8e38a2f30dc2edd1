import { describe, expect, test } from "vitest";
import { leastTank, standardTanks } from "../../../src/advice";
import { allSpecies, speciesById } from "../../../src/catalog";
import { assessPlan } from "../../../src/compatibility";
import type { Group, Plan } from "../../../src/plan";
import { factAt } from "../../../src/species";
import { type TankDimensions, tankGeometry } from "../../../src/tank";
import { someSpecies } from "../../drawn";

const catalogued = (id: string, unsexed: number): Group => ({
  species: speciesById(id) ?? expect.fail(`no ${id}`),
  unsexed,
});

test("company that may be added comes in only where no tank does without", () => {
  const company = allSpecies.filter((species) => factAt(species, "social.settles")?.value);
  const { species } = catalogued("thayeria-boehlkei", 1);
  const groups: readonly Group[] = [
    { species, males: 1, temper: "shyer" },
    catalogued("atyopsis-moluccensis", 2),
  ];
  const [alone] = leastTank(groups);
  expect(alone?.base).toEqual({ shape: "rectangle", length: 80, width: 35 });
  expect(leastTank(groups, { company })[0]).toEqual(alone);
});

test("who must be longer than given when they move in is told", () => {
  const barbs = catalogued("puntigrus-tetrazona", 8);
  const young: Group = { ...catalogued("paracheirodon-innesi", 10), length: 1 };
  const [least] = leastTank([young, barbs]);
  const plan = least?.plan ?? expect.fail("no tank");
  expect(least?.longer).toEqual([0]);
  expect(plan.groups[0]?.length).toBeGreaterThan(1);
  expect(assessPlan({ ...plan, groups: [young, barbs] }).outcome).not.toBe("suitable");
  expect(leastTank([{ ...young, length: 2 }, barbs])[0]?.longer).toEqual([]);
});

describe("for animals of the catalog", () => {
  const companies: readonly (readonly Group[])[] = [
    [catalogued("danio-rerio", 10)],
    [catalogued("paracheirodon-innesi", 10), catalogued("hoplisoma-panda", 6)],
    [catalogued("astronotus-ocellatus", 2)],
    [catalogued("betta-splendens", 1)],
  ];

  const hardlyLess = (plan: Plan) =>
    assessPlan(plan).findings.filter(
      ({ rule, weight }) => weight === "advisory" && ["longest-run", "footprint", "zones"].includes(rule),
    );

  test("all have the room that their records state, none of it hardly less", () => {
    const stated = someSpecies(40, 0).flatMap((species) => {
      const { value: room } = factAt(species, "space.baseLength") ?? {};
      const group = factAt(species, "social.group")?.value.least ?? 1;
      const forFew = room?.find((one) => one.for <= group);
      return forFew ? [{ species, group, length: forFew.least }] : [];
    });
    let told = 0;
    for (const { species, group, length } of stated) {
      const [least] = leastTank([{ species, unsexed: group }], { most: 1 });
      if (!least) continue;
      told += 1;
      const { base } = least;
      expect(base.shape === "rectangle" && base.length, species.id).toBeGreaterThanOrEqual(length);
      expect(hardlyLess(least.plan), species.id).toEqual([]);
    }
    expect(told).toBeGreaterThan(20);
  });

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
      for (const tank of smaller) {
        const inIt = { ...plan, tank: { ...plan.tank, ...tank } };
        expect(assessPlan(inIt).outcome === "suitable" && hardlyLess(inIt).length === 0).toBe(false);
      }
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
