import fc from "fast-check";
import { expect, test } from "vitest";
import type { Group, PlannedTank } from "../../src/plan";
import { officialRequirements } from "../../src/standards";
import { adults, adultsBySex, animal } from "../compatibility/animals";
import { animals } from "../compatibility/arbitrary";
import { planOf } from "../compatibility/judging";

const centimetres = fc.constantFrom(2, 3, 5, 10, 25, 45, 120);
const ids = fc.constantFrom("paracheirodon-innesi", "carassius-auratus", "pterophyllum-scalare", "a", "b");

const lengths = fc.oneof(
  fc.tuple(centimetres, centimetres).map(([a, b]) => adults(Math.min(a, b), Math.max(a, b))),
  fc.tuple(centimetres, centimetres).map(([male, female]) => adultsBySex(male, female)),
);

const group = fc.tuple(ids, lengths, animals, fc.constantFrom("shoal" as const, "alone" as const)).map(
  ([id, length, counts, living]): Group => ({
    species: animal(id, { "size.adultLength": length, "social.living": living }),
    ...counts,
  }),
);

const groups = fc.uniqueArray(group, { minLength: 1, maxLength: 4, selector: ({ species }) => species.id });

const sizes = fc.record({
  length: fc.integer({ min: 20, max: 500 }),
  width: fc.integer({ min: 15, max: 200 }),
  height: fc.integer({ min: 15, max: 150 }),
  glass: fc.constantFrom(0, 0.5, 2),
  waterBelowRim: fc.constantFrom(0, 3),
});

const tankOf = ({
  length,
  width,
  height,
  ...rest
}: Record<"length" | "width" | "height" | "glass" | "waterBelowRim", number>): PlannedTank => ({
  base: { shape: "rectangle", length, width },
  height,
  measured: "outer",
  ...rest,
});

const answersOf = (stock: readonly Group[], tank: PlannedTank) =>
  new Map(officialRequirements(planOf(stock, { tank })).map(({ id, answer }) => [id, answer]));

const rank = { "not-met": 0, depends: 1, undetermined: 1, met: 2 } as const;

test("more litres, floor and depth never turn met into not met", () => {
  const more = fc.record({
    length: fc.integer({ min: 0, max: 200 }),
    width: fc.integer({ min: 0, max: 100 }),
    height: fc.integer({ min: 0, max: 50 }),
  });
  fc.assert(
    fc.property(groups, sizes, more, (stock, size, added) => {
      const larger = {
        ...size,
        length: size.length + added.length,
        width: size.width + added.width,
        height: size.height + added.height,
      };
      const after = answersOf(stock, tankOf(larger));
      for (const [id, answer] of answersOf(stock, tankOf(size))) {
        expect(rank[after.get(id) ?? "not-met"], id).toBeGreaterThanOrEqual(rank[answer]);
      }
    }),
  );
});

test("a length no longer known opens answers and decides none", () => {
  let opened = 0;
  fc.assert(
    fc.property(groups, sizes, (stock, size) => {
      const [first, ...others] = stock;
      if (!first) return;
      const { size: _, ...unsized } = first.species;
      const before = answersOf(stock, tankOf(size));
      const after = answersOf([{ ...first, species: unsized }, ...others], tankOf(size));
      for (const [id, answer] of after) {
        const known = before.get(id);
        if (answer === known) continue;
        expect(answer, id).toBe("undetermined");
        opened += 1;
      }
      for (const id of before.keys()) expect([...after.keys()]).toContain(id);
    }),
  );
  expect(opened).toBeGreaterThan(5);
});
