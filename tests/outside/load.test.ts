import { describe, expect, test } from "vitest";
import { bodyMass, filterCapacity, nitrogenLoad, oxygenDemand, ration } from "vivary/load";
import { readFixture } from "./fixtures/read";

interface Row<Value> {
  readonly id: string;
  readonly quantity: string;
  readonly value: Value;
  readonly range95?: readonly [number, number];
}

/** Each row has its source, and whether it was read or worked from the equation of that source. */
const rows: readonly Row<never>[] = JSON.parse(readFixture("load.json"));
const startingWith = <Value>(start: string) =>
  rows.filter(({ id }) => id.startsWith(start)) as readonly Row<Value>[];
const printed = <Value>(id: string): Value => {
  const row = rows.find((found) => found.id === id);
  if (!row) throw new Error(`no row ${id}`);
  return row.value;
};

/** Tables are printed to four digits. */
const within = (found: number, expected: number, share = 0.001) =>
  expect(Math.abs(found - expected), `${found} for ${expected}`).toBeLessThan(expected * share);

describe("mass by length and body shape (worked from the priors of Froese, Thorson & Reyes 2014)", () => {
  test.each(startingWith<number>("lw-"))("$quantity", ({ id, value, range95 = [0, 0] }) => {
    const [, shape, length] = /^lw-(.+)-(\d+)$/.exec(id) ?? [];
    const { typical, likely } = bodyMass({ length: Number(length), shape: shape as "fusiform" });
    within(typical, value);
    within(likely.min, range95[0], 0.02);
    within(likely.max, range95[1], 0.02);
  });

  test("a grown zebrafish: the fish of the respiration study weighed 0.43 to 0.55 g", () => {
    // Lucas & Priede 1992. Zebrafish of that mass measure 3.5 to 4 cm (from memory).
    const [short, long] = [3.5, 4].map((length) => bodyMass({ length, shape: "fusiform" }).typical);
    expect(short).toBeLessThan(0.551);
    expect(long).toBeGreaterThan(0.43);
  });
});

describe("oxygen at rest", () => {
  test.each(startingWith<{ readonly mg_per_h: number }>("o2-"))(
    "$quantity (worked from the line of Clarke & Johnston 1999)",
    ({ id, value }) => {
      const [, mass, temperature] = /^o2-(.+)-(\d+)$/.exec(id) ?? [];
      within(oxygenDemand({ mass: Number(mass), temperature: Number(temperature) }).resting, value.mg_per_h);
    },
  );

  test("of zebrafish, as measured: the line for all fishes lies within a third of it", () => {
    const mass = 0.49;
    const perKilogram = (mgPerHour: number) => (mgPerHour / mass) * 1000;
    const { resting, routine, active } = oxygenDemand({ mass, temperature: 24 });
    const off = (found: number, measured: number) => Math.abs(perKilogram(found) / measured - 1);
    expect(off(resting, printed("zebrafish-smr"))).toBeLessThan(0.35);
    expect(off(routine, printed("zebrafish-rout-group"))).toBeLessThan(0.35);
    expect(off(active, printed("zebrafish-vmax-group"))).toBeLessThan(0.35);
  });
});

describe("food for a day", () => {
  test.each(startingWith<{ readonly feed_percent_BW_per_d: number }>("maintenance-"))(
    "$quantity",
    ({ id, value }) => {
      const mass = Number(id.replace("maintenance-ration-", ""));
      within((ration({ mass }).min / mass) * 100, value.feed_percent_BW_per_d, 0.01);
    },
  );

  test("a neon tetra at upkeep, as fed in the Waltham trial, lies between the ends", () => {
    const { min, max } = ration({ mass: 0.17 });
    const eaten = (printed<number>("maint-neon-ration") / 1000) * 0.17;
    expect(eaten).toBeGreaterThan(min);
    expect(eaten).toBeLessThan(max);
  });

  test("the 1 to 2.5 % named for small cichlids, gouramis, tetras and danios overlaps the ends at their masses", () => {
    const [least, most] = printed<readonly [number, number]>("feed-vet-range");
    for (const mass of [0.2, 0.4, 6]) {
      const { min, max } = ration({ mass });
      expect((min / mass) * 1000).toBeLessThan(most);
      expect((max / mass) * 1000).toBeGreaterThan(least);
    }
  });
});

describe("ammonia nitrogen from food (Timmons & Ebeling)", () => {
  test.each([
    ["half a gram a day of 45 % protein, mg", "tan-worked-1", 0.5, 0.45, 1],
    ["a kilogram a day of 35 % protein, g", "tan-worked-2", 1000, 0.35, 1000],
    ["a gram of 30 % protein, mg", "tan-per-feed-30", 1, 0.3, 1],
    ["a gram of 50 % protein, mg", "tan-per-feed-50", 1, 0.5, 1],
  ])("%s", (_, id, food, proteinShare, unit) => {
    within(nitrogenLoad({ food, proteinShare }) / unit, printed(id), 1e-6);
  });

  test("fish fed 1 % of their mass give off about 25 mg for each 100 g of them", () => {
    // Department of Fisheries Malaysia, training note: 25 mg per 100 g a day, at about 1 % of 30 to 40 % protein.
    within(nitrogenLoad({ food: 1, proteinShare: 0.3 }), 25, 0.15);
  });
});

test("media at the low ammonia of an aquarium: 20 mg a day need half a square metre at a tenth of 0.4 g/(m² d)", () => {
  // Worked from the design rate of a published sizing script and the first-order fall of SRAC 453.
  const { min, max } = filterCapacity({ mediaArea: 0.5, age: 60 });
  expect(min).toBeLessThan(20);
  expect(max).toBeGreaterThan(20);
});
