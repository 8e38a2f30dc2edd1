import fc from "fast-check";
import { describe, expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import { type Stretch, type TurningOptions, turningPoints } from "../../../src/advice";
import { axisOf } from "../../../src/advice/turning-points/axis";
import { assessPlan, defineRule, pairRules, planRules } from "../../../src/compatibility";
import { InvalidInputError } from "../../../src/errors";
import type { Plan } from "../../../src/plan";
import type { Range } from "../../../src/ranges";
import { tankFloor } from "../../../src/tank";
import { tanks } from "../../plan/arbitrary";
import { runs } from "../../runs";
import { faultsOf } from "./by-hand";

const danios: Plan = {
  tank: {
    base: { shape: "rectangle", length: 100, width: 40 },
    height: 45,
    lid: true,
    cover: 0.3,
    openWater: 0.6,
    flow: { calmest: "still", strongest: "moderate" },
    filter: { mediaArea: 4, age: 200 },
  },
  water: { temperature: 23, pH: 7, generalHardness: 10 },
  groups: [{ species: danioRerio, unsexed: 8 }],
};

const beside: Plan = {
  ...danios,
  tank: { ...danios.tank, base: { shape: "rectangle", length: 150, width: 60 }, height: 60, sightBreaks: 4 },
  water: { temperature: 25.5, pH: 6.8, generalHardness: 8 },
  groups: [
    { species: pterophyllumScalare, unsexed: 2 },
    { species: paracheirodonInnesi, unsexed: 10 },
  ],
};

/** What is followed, and from where to where if nobody says: what aquaria have, and lengths up to the greatest known. */
const followed: readonly (readonly [string, Plan, TurningOptions, Range])[] = [
  ["the length of the tank", danios, { on: "tank.longestRun" }, { min: 40, max: 500 }],
  ["its floor", danios, { on: "tank.footprint", span: { min: 400, max: 9000 } }, { min: 400, max: 9000 }],
  ["the cover", danios, { on: "tank.cover" }, { min: 0, max: 1 }],
  ["the temperature", danios, { on: "water.temperature" }, { min: 4, max: 36 }],
  ["the pH", danios, { on: "water.pH" }, { min: 4, max: 9.5 }],
  ["the hardness", danios, { on: "water.generalHardness" }, { min: 0, max: 30 }],
  // USGS: 4 cm of a measure that it does not state, so that a fifth may be missing.
  ["the length of what may be eaten", beside, { on: "group.length", of: 1 }, { min: 0.5, max: 5 }],
  // FishBase: 15 cm of total length.
  ["the length of what may eat", beside, { on: "group.length", of: 0 }, { min: 0.5, max: 15 }],
];

const outcomesOf = (stretches: readonly Stretch[]) => stretches.map(({ outcome }) => outcome);

describe.each(followed)("along %s", (_, plan, options, span) => {
  const stretches = turningPoints(plan, options);

  test("the outcome is told from end to end, differs on either side of each point, and nowhere else on a fine grid", () => {
    expect([stretches[0]?.from, stretches.at(-1)?.to]).toEqual([span.min, span.max]);
    expect(faultsOf(plan, options, stretches, 150)).toEqual({ faults: [], turns: stretches.length - 1 });
  });
});

test("of all that is followed most turns somewhere", () => {
  const turning = followed.filter(([, plan, options]) => turningPoints(plan, options).length > 1);
  expect(turning.length).toBeGreaterThanOrEqual(6);
});

test("the points are those at which the rules decide, to the digit", () => {
  const asked = assessPlan({ ...danios, water: { ...danios.water, temperature: 30 } });
  const wanted = asked.conditions.find(({ on }) => on === "water.temperature")?.wanted;
  const [cold, fine, warm] = turningPoints(danios, { on: "water.temperature" });
  expect([cold?.outcome, fine?.outcome, warm?.outcome]).toEqual(["conditional", "suitable", "conditional"]);
  expect(wanted).toEqual({ min: fine?.from, max: fine?.to, unit: "degC" });
});

test("a number goes in whole animals, and a current by its name", () => {
  const counts = turningPoints(danios, { on: "group.count", of: 0, span: { min: 1, max: 20 } });
  expect(counts[0]).toEqual({ from: 1, to: 5, outcome: "conditional" });
  expect(counts[1]?.from).toBe(6);
  for (const { from, to, outcome } of counts)
    for (const unsexed of [Number(from), Number(to)])
      expect(assessPlan({ ...danios, groups: [{ species: danioRerio, unsexed }] }).outcome).toBe(outcome);
  const currents = turningPoints(danios, { on: "tank.flow.calmest" });
  expect(currents[0]?.from).toBe("still");
  expect(currents.at(-1)?.to).toBe("strong");
});

describe("by an app's rule", () => {
  const tooLong = defineRule({
    id: "x-too-long",
    way: "once",
    reads: ["tank.longestRun"],
    mayYield: ["blocking"],
    judge: ({ plan }) => (plan["tank.longestRun"] > 100 * Math.SQRT2 ? [{ weight: "blocking" }] : []),
  });
  const tooMild = defineRule({
    id: "x-too-mild",
    way: "once",
    reads: ["water.temperature"],
    mayYield: ["blocking"],
    judge: ({ plan: { "water.temperature": warm = 0 } }) =>
      warm > Math.PI * 7 && warm < Math.PI * 7.5 ? [{ weight: "blocking" }] : [],
  });

  test("more room may be worse, and the point is found to a millionth of the span", () => {
    const found = turningPoints(danios, {
      on: "tank.longestRun",
      span: { min: 50, max: 250 },
      rules: [tooLong],
    });
    expect(outcomesOf(found)).toEqual(["suitable", "unsuitable"]);
    expect(Math.abs(Number(found[1]?.from) - 100 * Math.SQRT2)).toBeLessThan(200e-6);
  });

  test("and of a stretch both ends", () => {
    const rules = [...planRules, ...pairRules, tooMild];
    const found = turningPoints(danios, { on: "water.temperature", span: { min: 20, max: 25 }, rules });
    expect(outcomesOf(found)).toEqual(["suitable", "unsuitable", "suitable"]);
    expect(Number(found[1]?.from)).toBeCloseTo(Math.PI * 7, 6);
    expect(Number(found[1]?.to)).toBeCloseTo(Math.PI * 7.5, 6);
  });
});

test("a tank of any shape is followed from what its walls leave of it to what aquaria have", () => {
  const property = fc.property(
    tanks,
    fc.constantFrom("tank.longestRun" as const, "tank.footprint" as const),
    (tank, on) => {
      const plan = { tank, groups: danios.groups };
      const axis = axisOf(plan, { on });
      const { longestRun, footprint } = tankFloor(tank).nominal;
      expect(axis.min).toBeLessThanOrEqual(on === "tank.longestRun" ? longestRun : footprint);
      for (const size of [axis.min, axis.max]) {
        const { base } = axis.at(size).tank ?? {};
        if (!base) throw new Error("The base stays as it was.");
        const changed = tankFloor({ ...tank, base }).nominal;
        expect(on === "tank.longestRun" ? changed.longestRun : changed.footprint).toBeCloseTo(size, 6);
      }
    },
  );
  fc.assert(property, { numRuns: runs(200) });
});

test("in a tank of any shape nothing changes but where it is told", () => {
  const floors = ["tank.longestRun", "tank.footprint"] as const;
  let turns = 0;
  fc.assert(
    fc.property(tanks, fc.constantFrom(...floors), (tank, on) => {
      const plan = { tank, groups: danios.groups };
      const found = faultsOf(plan, { on }, turningPoints(plan, { on }), 37);
      expect(found.faults).toEqual([]);
      turns += found.turns;
    }),
    { numRuns: runs(15) },
  );
  expect(turns).toBeGreaterThanOrEqual(runs(3));
});

test("a tank is followed from as long as it is wide, whatever its measures", () => {
  for (const [length, width] of [
    [30.1, 21.1],
    [21.1, 30.1],
    [100.3, 33.3],
  ] as const) {
    const plan: Plan = { ...danios, tank: { ...danios.tank, base: { shape: "rectangle", length, width } } };
    const least = Math.min(length, width);
    const [first] = turningPoints(plan, { on: "tank.longestRun", span: { min: least, max: 200 } });
    expect(first?.from).toBe(least);
    expect(turningPoints(plan, { on: "tank.longestRun" })[0]?.from).toBe(least);
  }
});

test("what cannot be followed is refused", () => {
  const refused = (options: object) =>
    expect(() => turningPoints(danios, options as TurningOptions)).toThrow(InvalidInputError);
  refused({ on: "tank.lid" });
  refused({ on: "group.count" });
  refused({ on: "group.count", of: 1 });
  refused({ on: "water.pH", of: 0 });
  refused({ on: "water.temperature", span: { min: 25, max: 20 } });
  refused({ on: "water.temperature", span: { min: -50, max: 20 } });
  refused({ on: "group.count", of: 0, span: { min: 0, max: 9 } });
  refused({ on: "group.count", of: 0, span: { min: 3.2, max: 3.8 } });
  refused({ on: "tank.longestRun", span: { min: 10, max: 90 } });
  refused({ on: "tank.flow.calmest", span: { min: 0, max: 1 } });
});
