import { describe, expect, test } from "vitest";
import { leastTank, standardTanks } from "../../../src/advice";
import { defineRule } from "../../../src/compatibility";
import { footprint } from "../../../src/compatibility/rules/plan/footprint";
import { height } from "../../../src/compatibility/rules/plan/height";
import { longestRun } from "../../../src/compatibility/rules/plan/longest-run";
import type { Group } from "../../../src/plan";
import { type TankDimensions, tankGeometry } from "../../../src/tank";
import { adults, animal, inAnyNumber } from "../../compatibility/animals";
import { expectRefused } from "../../refused";

const swimmer = (run: number, floor: number) =>
  animal("swimmer", {
    ...inAnyNumber,
    "size.adultLength": adults(6),
    "space.baseLength": [{ least: run, for: 1 }],
    "space.footprint": [{ least: floor, for: 1 }],
  });

const rules = [longestRun, footprint, height];
const of = (species: Group["species"], unsexed = 1): readonly Group[] => [{ species, unsexed }];
const rectangle = (length: number, width: number, high: number): TankDimensions => ({
  base: { shape: "rectangle", length, width },
  height: high,
});

describe("the least tank", () => {
  const shapes = [
    rectangle(120, 40, 50),
    rectangle(100, 30, 30),
    rectangle(80, 60, 40),
    rectangle(60, 30, 30),
  ];

  test("is the smallest floor that will do, with volume and mass, and what the next smaller one lacks", () => {
    const [least, ...others] = leastTank(of(swimmer(100, 2800)), { rules, shapes });
    expect(least).toMatchObject({
      ...rectangle(100, 30, 30),
      litres: 90,
      // 90 L at 0.99705 kg/L, and no glass is given.
      filledMass: expect.closeTo(89.73, 2),
      limitedBy: [
        { rule: "longest-run", weight: "restricting", condition: { wanted: { min: 100 } } },
        { rule: "footprint", weight: "restricting", condition: { wanted: { min: 2800 } } },
      ],
    });
    expect(others).toEqual([]);
  });

  test("are several where none lies within another", () => {
    const found = leastTank(of(swimmer(80, 3600)), { rules, shapes });
    expect(found.map(({ base }) => base)).toEqual([
      { shape: "rectangle", length: 80, width: 60 },
      { shape: "rectangle", length: 120, width: 40 },
    ]);
    expect(leastTank(of(swimmer(80, 3600)), { rules, shapes, most: 1 })).toHaveLength(1);
  });

  test("is limited by nothing where no smaller one lies within it", () => {
    expect(leastTank(of(swimmer(40, 900)), { rules, shapes })).toMatchObject([
      { ...rectangle(60, 30, 30), limitedBy: [] },
    ]);
  });

  test("is none where none will do", () => {
    expect(leastTank(of(swimmer(300, 2800)), { rules, shapes })).toEqual([]);
  });

  test("may be of any shape and in any unit, and is told as it was given", () => {
    const bowl = {
      base: { shape: "circle", diameter: 40 },
      height: 12,
      unit: "in",
      measured: "outer",
    } as const;
    const [least] = leastTank(of(swimmer(100, 7500)), { rules, shapes: [...shapes, bowl] });
    expect(least).toMatchObject(bowl);
    expect(least?.litres).toBeCloseTo(tankGeometry(bowl).grossVolume, 9);
  });

  test("is sought among larger ones by itself, where more room makes it worse", () => {
    const cosy = defineRule({
      id: "x-cosy",
      way: "once",
      reads: ["tank.longestRun"],
      mayYield: ["blocking"],
      judge: ({ plan }) => (plan["tank.longestRun"] > 100 ? [{ weight: "blocking" }] : []),
    });
    const found = leastTank(of(swimmer(80, 2800)), { rules: [...rules, cosy], shapes });
    expect(found.map(({ base }) => base)).toEqual([
      { shape: "rectangle", length: 100, width: 30 },
      { shape: "rectangle", length: 80, width: 60 },
    ]);
  });
});

test("what is no group, no tank or no count is refused", () => {
  const groups = of(swimmer(60, 1800));
  expectRefused(() => leastTank([]), "groups");
  expectRefused(() => leastTank([{ species: swimmer(60, 1800), males: -1 }]), "groups[0].males");
  expectRefused(() => leastTank(groups, { shapes: [] }), "options.shapes");
  expectRefused(() => leastTank(groups, { shapes: [rectangle(60, 30, 0)] }), "options.shapes[0].height");
  expectRefused(() => leastTank(groups, { most: 0 }), "options.most");
  // @ts-expect-error: no options
  expectRefused(() => leastTank(groups, "one"), "options");
});

test("standard tanks hold what their measures say, and each stands once", () => {
  expect(new Set(standardTanks.map((tank) => JSON.stringify(tank))).size).toBe(standardTanks.length);
  for (const tank of standardTanks) expect(tankGeometry(tank).waterVolume).toBeGreaterThan(8);
});
