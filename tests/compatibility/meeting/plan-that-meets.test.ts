import { describe, expect, test } from "vitest";
import ancistrus from "vivary/catalog/ancistrus-cirrhosus";
import danioRerio from "vivary/catalog/danio-rerio";
import labidochromis from "vivary/catalog/labidochromis-caeruleus";
import mikrogeophagus from "vivary/catalog/mikrogeophagus-altispinosus";
import guppy from "vivary/catalog/poecilia-reticulata";
import endlers from "vivary/catalog/poecilia-wingei";
import scalare from "vivary/catalog/pterophyllum-scalare";
import trichogasterChuna from "vivary/catalog/trichogaster-chuna";
import swordtail from "vivary/catalog/xiphophorus-hellerii";
import { assessPlan, planThatMeets } from "../../../src/compatibility";
import { isMet, type Plan } from "../../../src/plan";
import type { SpeciesProfile } from "../../../src/species";

const plan: Plan = {
  tank: { base: { shape: "rectangle", length: 60, width: 30 } },
  groups: [{ species: danioRerio, unsexed: 3 }],
};

describe("a condition of a verdict, met at the press of a button", () => {
  test("is met by the plan that comes of it", () => {
    const { conditions } = assessPlan(plan);
    expect(conditions.length).toBeGreaterThan(5);
    for (const condition of conditions) {
      const changed = planThatMeets(condition, plan);
      expect(changed && isMet(condition, changed)).toBe(true);
    }
  });

  test("gives a tank in inches measures as a ruler has them, none of them too small", () => {
    const inches: Plan = {
      tank: { base: { shape: "rectangle", length: 24, width: 12 }, unit: "in", height: 10 },
      groups: [{ species: scalare, unsexed: 2 }],
    };
    const conditions = assessPlan(inches).conditions.filter(({ on }) => /height|Run|footprint/.test(on));
    expect(conditions.map(({ on }) => on)).toContain("tank.height");
    for (const condition of conditions) {
      const changed = planThatMeets(condition, inches);
      expect(changed && isMet(condition, changed)).toBe(true);
      const { height, base } = changed?.tank ?? {};
      for (const figure of [height, ...Object.values({ ...base })])
        if (typeof figure === "number") expect(Number(figure.toFixed(1))).toBe(figure);
    }
    const tall = { on: "tank.height", wanted: { min: 50 } } as const;
    expect(planThatMeets(tall, inches)?.tank.height).toBe(19.7);
  });

  test("leaves a plan alone that meets it", () => {
    expect(planThatMeets({ on: "group.count", of: 0, wanted: { min: 2 } }, plan)).toBe(plan);
  });

  test("takes no animal away", () => {
    expect(planThatMeets({ on: "group.count", of: 0, wanted: { max: 1 } }, plan)).toBeUndefined();
  });

  test("is left to the keeper where a tank would need more places than a plan may hold", () => {
    const crowd: Plan = { ...plan, groups: [{ species: trichogasterChuna, unsexed: 5000 }] };
    const places = { on: "tank.sightBreaks", wanted: { min: 2499 } } as const;
    const caves = { on: "tank.hides", of: 0, wanted: { min: 5000 } } as const;
    expect(planThatMeets(places, crowd)).toBeUndefined();
    expect(
      planThatMeets(caves, { ...plan, groups: [{ species: ancistrus, unsexed: 5000 }] }),
    ).toBeUndefined();
  });

  describe("where more of a male's kind are wanted", () => {
    const male = { species: mikrogeophagus, form: "long-fin", males: 1 } as const;
    const twoOfIt = { on: "group.count", of: 0, wanted: { min: 2 } } as const;
    const large: Plan = { tank: { base: { shape: "rectangle", length: 300, width: 100 } }, groups: [male] };

    test("adds females", () => {
      expect(planThatMeets(twoOfIt, large)?.groups).toEqual([{ ...male, females: 1 }]);
    });

    test("adds males beside those that leave females no peace", () => {
      const beside: Plan = { ...large, groups: [male, { species: labidochromis, unsexed: 5 }] };
      expect(assessPlan(beside).conditions).toContainEqual(expect.objectContaining(twoOfIt));
      const changed = planThatMeets(twoOfIt, beside);
      expect(changed?.groups[0]).toEqual({ ...male, males: 2 });
      expect(changed && assessPlan(changed).outcome).toBe("conditional");
    });
  });

  describe("where more are wanted of males by themselves", () => {
    const of = (species: SpeciesProfile, males: number) => {
      const before: Plan = { ...plan, groups: [{ species, males }] };
      const more = assessPlan(before).conditions.find(({ on }) => on === "group.count");
      return more && planThatMeets(more, before)?.groups[0];
    };

    test("adds males of those that are no rivals, so that there are no young still", () => {
      expect(of(endlers, 4)).toEqual({ species: endlers, males: 5 });
      expect(of(guppy, 2)).toEqual({ species: guppy, males: 5 });
    });

    test("adds females where young are wanted, or where females stand in another group", () => {
      const asked = { on: "group.count", of: 0, wanted: { min: 6 } } as const;
      const raising: Plan = { ...plan, groups: [{ species: guppy, males: 3, raises: true }] };
      expect(planThatMeets(asked, raising)?.groups[0]).toEqual({ ...raising.groups[0], females: 3 });
      const apart: Plan = {
        ...plan,
        groups: [
          { species: guppy, males: 2 },
          { species: guppy, females: 1 },
        ],
      };
      expect(planThatMeets(asked, apart)?.groups[0]).toEqual({ species: guppy, males: 2, females: 3 });
    });

    test("adds females to males that chase each other, and to a single one", () => {
      expect(of(swordtail, 3)).toEqual({ species: swordtail, males: 3, females: 2 });
      expect(of(guppy, 1)).toEqual({ species: guppy, males: 1, females: 4 });
    });
  });

  test("is left to the keeper where a species would have to be chosen", () => {
    const shy: Plan = { ...plan, groups: [{ species: trichogasterChuna, males: 1 }] };
    expect(planThatMeets({ on: "group.company", of: 0, wanted: { oneOf: [true] } }, shy)).toBeUndefined();
  });
});
