import { describe, expect, test } from "vitest";
import { bodyMass, filterCapacity, nitrogenLoad, oxygenDemand, ration } from "vivary/load";
import { readFixture, readTable } from "./fixtures/read";

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

/** The number an id ends on. */
const lengthIn = ({ id }: Row<unknown>) => Number(id.split("-").at(-1));

/** Rows worked to four digits, spans to three. */
const within = (found: number, expected: number, share = 0.001) =>
  expect(Math.abs(found - expected), `${found} for ${expected}`).toBeLessThan(expected * share);

describe("mass by length and body shape (worked from the priors of Froese, Thorson & Reyes 2014)", () => {
  const known = ["eel-like", "elongated", "fusiform", "short-deep"] as const;
  const cells = known.flatMap((shape) =>
    startingWith<number>(`lw-${shape}-`).map((row) => ({ ...row, shape, length: lengthIn(row) })),
  );
  test.each(cells)("$quantity", ({ shape, length, value, range95 = [0, 0] }) => {
    const { typical, likely } = bodyMass({ length, shape });
    within(typical, value);
    within(likely.min, range95[0], 0.01);
    within(likely.max, range95[1], 0.01);
  });

  test.each(startingWith<number>("lw-all-shapes-"))("$quantity: its span lies in ours", (row) => {
    const { typical, likely } = bodyMass({ length: lengthIn(row) });
    const [least, most] = row.range95 ?? [0, 0];
    within(typical, row.value);
    expect(likely.min).toBeLessThan(least);
    expect(likely.max).toBeGreaterThan(most * 0.99);
  });

  test("the check of the FishBase manual for gross errors: a fusiform fish of 10 cm weighs about 10 g", () => {
    within(bodyMass({ length: 10, shape: "fusiform" }).typical, printed("gross-error-10"), 0.25);
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
    // The middle of 0.43 to 0.55 g. Lucas & Priede 1992, read.
    const mass = 0.49;
    const perKilogram = (mgPerHour: number) => (mgPerHour / mass) * 1000;
    const { resting, routine, active } = oxygenDemand({ mass, temperature: 24 });
    const off = (found: number, measured: number) => Math.abs(perKilogram(found) / measured - 1);
    expect(off(resting, printed("zebrafish-smr"))).toBeLessThan(0.35);
    expect(off(routine, printed("zebrafish-rout-group"))).toBeLessThan(0.35);
    expect(off(active, printed("zebrafish-vmax-group"))).toBeLessThan(0.35);
    // Of fish by themselves.
    expect(off(resting, printed("zebrafish-rout"))).toBeLessThan(0.35);
    expect(off(active, printed("zebrafish-vmax"))).toBeLessThan(0.4);
  });

  test("at most, between that of fed zebrafish and that of exhausted ones, in shares of rest (Lucas & Priede 1992)", () => {
    const { resting, active } = oxygenDemand({ mass: 0.49, temperature: 24 });
    const [rest, exhausted] = [printed<number>("zebrafish-smr"), printed<number>("zebrafish-max")];
    const fed = rest + printed<number>("zebrafish-fed") * (exhausted - rest);
    expect(active / resting).toBeGreaterThan(fed / rest);
    expect(active / resting).toBeLessThan(exhausted / rest);
  });

  test("by temperature, as the abstract of Clarke & Johnston 1999 prints it beside the line", () => {
    const [cold, warm] = [0, 30].map((temperature) => oxygenDemand({ mass: 50, temperature }).resting);
    const times = (warm ?? 0) / (cold ?? 0);
    within(times ** (1 / 3), printed("cj-q10"), 0.005);
    within(times, printed("cj-tropical"), 0.05);
  });

  test.each(startingWith<number>("rmr-trout-"))(
    "$quantity, 100 g: the line lies within a factor of two (Scientific Reports 2023, as fitted to measurements)",
    ({ id, value }) => {
      const measured = Math.exp(value) * 0.1 ** 0.809 * 60;
      const { resting } = oxygenDemand({ mass: 100, temperature: Number(id.replace("rmr-trout-", "")) });
      expect(resting / measured).toBeGreaterThan(0.5);
      expect(resting / measured).toBeLessThan(2);
    },
  );
});

describe("oxygen by species, as measured (FishBase's table of oxygen use, version 06/2018, fresh water, no stress)", () => {
  const measured = readTable("oxygen-use.csv", ["level", "species", "mass", "temperature", "use"]);

  /** Measured use over the line at rest, as a logarithm, for each species on average. */
  function speciesAt(level: string): readonly number[] {
    const bySpecies = new Map<string, number[]>();
    for (const row of measured.filter((found) => found.level === level)) {
      const mass = Number(row.mass);
      const { resting } = oxygenDemand({ mass, temperature: Number(row.temperature) });
      const ratio = Math.log((Number(row.use) * mass) / 1000 / resting);
      bySpecies.set(row.species, [...(bySpecies.get(row.species) ?? []), ratio]);
    }
    return [...bySpecies.values()].map(mean);
  }

  const mean = (numbers: readonly number[]) =>
    numbers.reduce((sum, number) => sum + number, 0) / numbers.length;

  test.each([
    ["standard", "resting", 47],
    ["routine", "routine", 90],
    ["active", "active", 36],
  ] as const)(
    "%s: the span of %s use is that of %i species, and holds 19 of 20 of them",
    (level, use, count) => {
      const ratios = speciesAt(level);
      expect(ratios).toHaveLength(count);
      const { resting, likely } = oxygenDemand({ mass: 3, temperature: 25 });
      const least = Math.log(likely[use].min / resting);
      const most = Math.log(likely[use].max / resting);
      const middle = mean(ratios);
      const deviation = Math.sqrt(
        ratios.reduce((sum, ratio) => sum + (ratio - middle) ** 2, 0) / (ratios.length - 1),
      );
      expect(least).toBeCloseTo(middle - 1.96 * deviation, 1);
      expect(most).toBeCloseTo(middle + 1.96 * deviation, 1);
      const within = ratios.filter((ratio) => ratio >= least && ratio <= most).length;
      expect(within / ratios.length).toBeGreaterThan(0.91);
    },
  );
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
    const { min, max } = ration({ mass: 0.17, temperature: 26 });
    const eaten = (printed<number>("maint-neon-ration") / 1000) * 0.17;
    expect(eaten).toBeGreaterThan(min);
    expect(eaten).toBeLessThan(max);
  });

  test("upkeep as measured at 26 °C, in kJ a day: within a factor of two (Sales & Janssens 2003)", () => {
    const flake = printed<{ readonly mass_g: number; readonly feed_kJ_per_g: number }>("neon-flake");
    const energy = (mass: number) => ration({ mass, temperature: 26 }).min * flake.feed_kJ_per_g;
    // The mass of the gourami comes from another source than its upkeep.
    for (const [found, measured] of [
      [energy(flake.mass_g), printed<number>("maint-neon")],
      [energy(printed<number>("moonlight-mass")), printed<number>("maint-moonlight")],
    ] as const) {
      expect(found / measured).toBeGreaterThan(0.5);
      expect(found / measured).toBeLessThan(2);
    }
  });

  test("zebrafish of half a gram that do not breed may be given 3 % (Humane Endpoints)", () => {
    within(ration({ mass: 0.5 }).max / 0.5, printed<number>("feed-zf-maintenance") / 1000, 1e-9);
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

  test("a gram of 30 to 40 % protein gives about 25 mg by a training note of the Department of Fisheries Malaysia", () => {
    // The note rounds down: the equation gives 27.6 for the leanest of these foods.
    within(nitrogenLoad({ food: 1, proteinShare: 0.3 }), printed("tan-blog-rule"), 0.15);
  });
});

test("media are ripe no sooner than the FAO glossary says, and surely when Kentucky State University says", () => {
  const [soonest] = printed<readonly [number, number]>("ripen-fao");
  const [, surely] = printed<readonly [number, number]>("ripen-ksu");
  const at = (age: number) => filterCapacity({ mediaArea: 1, age });
  expect(at(soonest - 1).max).toBe(0);
  expect(at(soonest).max).toBeGreaterThan(0);
  expect(at(surely - 1).min).toBe(0);
  expect(at(surely).min).toBeGreaterThan(0);
});

test("media at the low ammonia of an aquarium: 20 mg a day need half a square metre at a tenth of 0.4 g/(m² d)", () => {
  // Worked from the design rate of a published sizing script (read) and the first-order fall of SRAC 453 (from memory).
  const { min, max } = filterCapacity({ mediaArea: 0.5, age: 60 });
  expect(min).toBeLessThan(20);
  expect(max).toBeGreaterThan(20);
});
