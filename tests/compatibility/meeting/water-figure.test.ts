import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import carassius from "vivary/catalog/carassius-auratus";
import lemonTetra from "vivary/catalog/hyphessobrycon-pulchripinnis";
import { setPoint } from "../../../src/advice";
import { assessPlan, pairPlan, planThatMeets } from "../../../src/compatibility";
import type { Plan } from "../../../src/plan";
import type { SpeciesProfile } from "../../../src/species";
import { anySpecies } from "../../drawn";
import { runs } from "../../runs";

const tank = { base: { shape: "rectangle", length: 1000, width: 500 }, height: 100 } as const;
const ofThese = (those: readonly SpeciesProfile[], water?: Plan["water"]): Plan => ({
  tank,
  groups: those.map((species) => ({ species, unsexed: 10 })),
  ...(water && { water }),
});

/** A plan in which all that its verdict asks of the water is met. */
const inItsWater = (plan: Plan): Plan["water"] =>
  assessPlan(plan)
    .conditions.filter(({ on }) => on.startsWith("water."))
    .reduce((met, condition) => planThatMeets(condition, met) ?? met, plan).water;

describe("the water that a plan is given to meet what is asked of it", () => {
  test("lies within what tetras are kept in, not at its end, where that has only one", () => {
    expect(lemonTetra.water?.generalHardness?.value.kept).toEqual({ max: 25 });
    expect(inItsWater(ofThese([lemonTetra]))?.generalHardness).toBe(12.5);
  });

  test("is as warm as is best for goldfish, not the middle of summer and winter", () => {
    expect(carassius.water?.temperature?.value.optimum).toEqual({ min: 18, max: 22 });
    expect(inItsWater(ofThese([carassius]))?.temperature).toBe(20);
  });

  test("is fresh for those of fresh water", () => {
    expect(inItsWater(ofThese([carassius], { salinity: 8 }))?.salinity).toBe(0);
  });

  test("keeps to what whoever asks aims at", () => {
    const wanted = { min: 10, max: 24 };
    const cool = planThatMeets(
      { on: "water.temperature", wanted, aim: { min: 12, max: 14 } },
      ofThese([carassius]),
    );
    expect(cool?.water?.temperature).toBe(13);
    const soft = planThatMeets({ on: "water.generalHardness", wanted: { max: 4 } }, ofThese([carassius]));
    expect(soft?.water?.generalHardness).toBeLessThanOrEqual(4);
  });

  test("has a hottest day and a coolest season no further off than is asked", () => {
    const plan = ofThese([carassius], { temperature: 20, hottest: 34, coolest: 2 });
    const water = inItsWater(plan);
    const asked = (on: string) => assessPlan(plan).conditions.find((one) => one.on === on)?.wanted;
    expect(asked("water.hottest")).toEqual(expect.objectContaining({ max: water?.hottest }));
    expect(asked("water.coolest")).toEqual(expect.objectContaining({ min: water?.coolest }));
  });

  test("is that of the set point, for each species", () => {
    for (const species of allSpecies) {
      const found = setPoint([species]);
      const { salinity, ...others } = found.conflict ? {} : found.water;
      expect(inItsWater(ofThese([species])), species.id).toEqual({
        ...others,
        ...(salinity && { salinity }),
      });
    }
  });

  test("is that of the set point, for two that go together", () => {
    let tried = 0;
    fc.assert(
      fc.property(anySpecies, anySpecies, (a, b) => {
        const plan = a === b ? undefined : pairPlan({ species: a }, { species: b });
        const found = setPoint([a, b]);
        if (!plan || found.conflict) return;
        tried += 1;
        expect({ salinity: 0, ...plan.water }).toEqual(found.water);
      }),
      { numRuns: runs(100) },
    );
    expect(tried).toBeGreaterThan(runs(20));
  });
});
