import { describe, expect, test } from "vitest";
import cyprinusRubrofuscus from "vivary/catalog/cyprinus-rubrofuscus";
import { feedingPlan } from "../../../src/advice";
import { nitrogenLoad, ration } from "../../../src/load";
import type { Group, Offering } from "../../../src/plan";
import { adults, adultsBySex, animal, type Stated } from "../../compatibility/animals";
import { planOf } from "../../compatibility/judging";
import { expectRefused } from "../../refused";
import { eater, fed, plain, rules } from "./eaters";

describe("what is given in a day", () => {
  test("is one food where all take it at one place and hour", () => {
    expect(fed(eater("a"), eater("b"))).toMatchObject({
      offerings: [{ food: "dry", place: "surface", light: "day", reaches: [0, 1], holdBack: [] }],
      groups: [{ offerings: [0] }, { offerings: [0] }],
      unreached: [],
    });
  });

  test("is more where they feed at different places or hours", () => {
    const { offerings } = fed(eater("a"), eater("b", { "diet.reach": ["bottom"], "diet.light": ["night"] }));
    expect(offerings).toMatchObject([
      { place: "surface", light: "day", reaches: [0] },
      { place: "bottom", light: "night", reaches: [1] },
    ]);
  });

  test("reaches a slow one where the fast one does not feed", () => {
    const { offerings } = fed(
      eater("fast", { "diet.pace": "fast" }),
      eater("slow", { "diet.pace": "slow", "diet.reach": ["midwater", "bottom"] }),
    );
    expect(offerings).toMatchObject([
      { place: "surface", reaches: [0], holdBack: [] },
      { place: "bottom", reaches: [1], holdBack: [] },
    ]);
    expect(offerings.some(({ apart }) => apart)).toBe(false);
  });

  test("is given to a slow one apart where the fast one feeds everywhere, and that is sated first", () => {
    const { offerings } = fed(eater("slow", { "diet.pace": "slow" }), eater("fast", { "diet.pace": "fast" }));
    expect(offerings).toEqual([
      { food: "dry", place: "surface", light: "day", reaches: [1], holdBack: [] },
      { food: "dry", place: "surface", light: "day", apart: true, reaches: [0], holdBack: [1] },
    ]);
  });

  test("leaves out whom nobody knows how to feed", () => {
    const unknown: Group = { species: animal("unknown", { "diet.pace": "ordinary" }), unsexed: 1 };
    expect(fed(unknown, eater("a"))).toMatchObject({ unreached: [0], offerings: [{ reaches: [1] }] });
  });

  test("takes the place of what the plan gave", () => {
    const given: Offering = { food: "wood", place: "bottom" };
    const found = feedingPlan({ ...planOf([eater("a")]), offerings: [given] }, { rules });
    expect(found.plan.offerings).toMatchObject([{ food: "dry", place: "surface" }]);
  });
});

describe("what it weighs", () => {
  const measured: Stated = { "size.adultLength": adults(10), "size.lengthWeight": { a: 0.01, b: 3 } };

  test("is nothing at least where fish grow torpid, and less at most than in summer", () => {
    const koi = (temperature: number) =>
      feedingPlan({
        tank: { base: { shape: "rectangle", length: 400, width: 200 } },
        water: { temperature },
        groups: [{ species: cyprinusRubrofuscus, unsexed: 5 }],
      }).groups[0]?.ration ?? expect.fail("no ration");
    expect(koi(4).min).toBe(0);
    expect(koi(10).min).toBeGreaterThan(0);
    expect(koi(4).max).toBeLessThan(koi(20).max / 2);
  });

  test("is the ration of so many grown fish, at the temperature of the water", () => {
    // 0.01 × 10³ = 10 g each; six of them at 24 °C.
    const each = ration({ mass: 10, temperature: 24 });
    const { groups, nitrogen } = fed(eater("a", measured));
    expect(groups[0]?.ration?.min).toBeCloseTo(6 * each.min, 9);
    expect(groups[0]?.ration?.max).toBeCloseTo(6 * each.max, 9);
    expect(nitrogen?.given.max).toBeCloseTo(nitrogenLoad({ food: 6 * each.max }), 9);
  });

  test("is that of the lightest and the heaviest where nobody weighed them", () => {
    const { groups } = fed(eater("a", { "size.adultLength": adults(10), "size.bodyShape": "fusiform" }));
    const known = fed(eater("a", measured)).groups[0]?.ration;
    expect(groups[0]?.ration?.min).toBeLessThan(known?.min ?? 0);
    expect(groups[0]?.ration?.max).toBeGreaterThan(known?.max ?? Number.POSITIVE_INFINITY);
  });

  test("goes by the length that they have where nobody knows how long their kind grows", () => {
    const weighed: Stated = { "size.lengthWeight": { a: 0.01, b: 3 } };
    const { groups } = fed({ ...eater("a", weighed), length: 10 });
    expect(groups[0]?.ration).toEqual(fed({ ...eater("a", measured), length: 10 }).groups[0]?.ration);
    expect(groups[0]?.ration?.min).toBeGreaterThan(0);
  });

  test("is not told of young, nor of shrimps, nor where nobody knows a length", () => {
    const young: Group = { species: animal("young", { ...plain, ...measured }), juveniles: 4 };
    const shrimp: Group = {
      species: animal("shrimp", { ...plain, ...measured }, { kind: "shrimp" }),
      unsexed: 9,
    };
    const found = fed(young, shrimp, eater("unmeasured"));
    for (const group of found.groups) expect(group).not.toHaveProperty("ration");
    expect(found).not.toHaveProperty("nitrogen");
  });

  test("is not told of fish that are shorter than grown ones, from nine tenths on it is", () => {
    const [short, long] = [8.9, 9].map((length) => fed({ ...eater("a", measured), length }).groups[0]);
    expect(short).toEqual({ offerings: [0], growing: true });
    expect(long?.ration?.max).toBeCloseTo(6 * ration({ mass: 0.01 * 9 ** 3, temperature: 24 }).max, 9);
    expect(long).not.toHaveProperty("growing");
  });

  test("is told of a grown male that is shorter than the females of its kind", () => {
    const { species } = eater("a", { ...measured, "size.adultLength": adultsBySex(5, 10) });
    const [male, female] = fed({ species, males: 1, length: 5 }, { species, females: 1, length: 5 }).groups;
    expect(male).toHaveProperty("ration");
    expect(female).toMatchObject({ growing: true });
  });

  test("is not told of a ray, whose disc tells no mass", () => {
    const lengths = adults(40).map((length) => ({ ...length, measure: "disc" as const }));
    expect(fed(eater("a", { "size.adultLength": lengths })).groups[0]).not.toHaveProperty("ration");
  });

  test("stands beside what the filter takes up", () => {
    const tank = { filter: { mediaArea: 2, age: 90 } };
    const { nitrogen } = feedingPlan(planOf([eater("a", measured)], { tank }), { rules });
    expect(nitrogen?.filter).toEqual({ min: 40, max: 200 });
  });
});

test("one day in the week is without food, but not where there are young or are to be", () => {
  expect(fed(eater("a")).restDays).toBe(1);
  expect(fed({ ...eater("a"), raises: true }).restDays).toBe(0);
  expect(fed({ species: animal("young", plain), juveniles: 2 }).restDays).toBe(0);
  const grown: Stated = { "size.adultLength": adults(10) };
  expect(fed({ ...eater("short", grown), length: 5 }).restDays).toBe(0);
  expect(fed({ ...eater("long", grown), length: 10 }).restDays).toBe(1);
});

test("what is no plan is refused", () => {
  const { groups: _, ...tank } = planOf([]);
  // @ts-expect-error: no groups
  expectRefused(() => feedingPlan(tank), "groups");
  expectRefused(() => feedingPlan(planOf([eater("a")]), { rules: [] }), "rules");
});

test("a stock that eats more than a tonne a day is refused by what it eats, in its unit", () => {
  const koi = planOf([{ species: cyprinusRubrofuscus, unsexed: 1_000_000 }]);
  expect(() => feedingPlan(koi, { rules })).toThrow(
    /^the food of all groups together: holds from 0 to 1000000 g\/d, found \d+(\.\d+)? g\/d$/,
  );
});
