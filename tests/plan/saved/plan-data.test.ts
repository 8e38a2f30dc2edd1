import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { findSpecies, speciesById } from "vivary/catalog";
import danioRerio from "vivary/catalog/danio-rerio";
import { assessPlan } from "../../../src/compatibility";
import { InvalidInputError } from "../../../src/errors";
import { type Plan, parsePlan, planData } from "../../../src/plan";
import { deepFrozen } from "../../compatibility/deep-frozen";
import { runs } from "../../runs";
import { plans } from "../arbitrary";

const base = { shape: "rectangle", length: 100, width: 40 } as const;

test("a plan that was saved and opened again gets the same verdict, and nothing given is changed", () => {
  fc.assert(
    fc.property(plans, (made) => {
      const plan = deepFrozen(made);
      const saved: unknown = JSON.parse(JSON.stringify(planData(plan)));
      const opened = parsePlan(deepFrozen(saved), speciesById);
      expect(opened.renamed).toEqual([]);
      expect(assessPlan(opened.plan)).toEqual(assessPlan(plan));
      expect(planData(opened.plan)).toEqual(saved);
    }),
    { numRuns: runs(150) },
  );
});

describe("what is saved", () => {
  const [longFin] = findSpecies("long-fin tiger barb");
  const tigerBarb = speciesById("puntigrus-tetrazona");
  if (!longFin || !tigerBarb) throw new Error("no tiger barb");

  test.each([
    ["applied to the profile", { species: longFin }],
    ["named beside it", { species: tigerBarb, form: "long-fin" }],
    ["given both ways", { species: longFin, form: "long-fin" }],
  ])("is the form as it is, if it was %s", (_, kind) => {
    const { groups } = planData({ tank: { base }, groups: [{ ...kind, unsexed: 8 }] });
    expect(groups).toEqual([{ species: "puntigrus-tetrazona", form: "long-fin", unsexed: 8 }]);
  });

  test("is the format, and nothing of what was left out", () => {
    const plan: Plan = {
      tank: { base, lid: undefined },
      water: undefined,
      groups: [{ species: danioRerio, unsexed: 8 }],
    };
    expect(planData(plan)).toStrictEqual({
      format: 1,
      tank: { base },
      groups: [{ species: "danio-rerio", unsexed: 8 }],
    });
  });

  test("is no plan that would not be judged", () => {
    expect(() => planData({ tank: { base }, groups: [] })).toThrow(InvalidInputError);
  });

  test("can be changed without changing the plan", () => {
    const plan: Plan = { tank: { base: { ...base } }, groups: [{ species: danioRerio, unsexed: 8 }] };
    const data = planData(plan);
    Object.assign(data.tank.base, { length: 1 });
    expect(plan.tank.base).toEqual(base);
  });
});
