import fc from "fast-check";
import { expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import { rangeChart, sizeChart } from "../../../src/report";
import type { AdultLength, SpeciesProfile } from "../../../src/species";
import { beyondThePage, extent, figureReader, ofClass, readSvg, rowsOf, ticksOf } from "./read-svg";

const figure = fc.double({ min: -2, max: 48, noNaN: true });
const span = fc.tuple(figure, figure).map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }));
const openOrNot = fc.oneof(
  span,
  figure.map((min) => ({ min })),
  figure.map((max) => ({ max })),
);
const name = fc.oneof(
  fc.string({ minLength: 1, unit: "binary" }),
  fc.string({ minLength: 1, maxLength: 80 }),
);

const kept: fc.Arbitrary<SpeciesProfile> = fc
  .record({ name, kept: fc.option(openOrNot), optimum: fc.option(span), limit: fc.option(openOrNot) })
  .map(({ name, kept, optimum, limit }) => ({
    ...danioRerio,
    names: { en: [name] },
    water: {
      ...(kept && {
        temperature: {
          value: { kept, ...(optimum && { optimum }), ...(limit && { limit }) },
          basis: "published" as const,
        },
      }),
    },
  }));

const units = fc.constantFrom("metric", "us", "imperial");

test("every picture of ranges is well-formed and stays on its page", () => {
  fc.assert(
    fc.property(fc.array(kept, { minLength: 1, maxLength: 12 }), units, (species, system) => {
      const svg = readSvg(rangeChart(species, "water.temperature", { units: system }));
      expect(beyondThePage(svg)).toEqual([]);
      expect(rowsOf(svg)).toHaveLength(species.length);
    }),
  );
});

test("the ticks of every axis are evenly spaced round figures that hold all that is drawn", () => {
  fc.assert(
    fc.property(fc.array(span, { minLength: 1, maxLength: 6 }), (spans) => {
      const species = spans.map((value) => ({
        ...danioRerio,
        water: { temperature: { value: { kept: value }, basis: "published" as const } },
      }));
      const svg = readSvg(rangeChart(species, "water.temperature"));
      const ticks = ticksOf(svg);
      const steps = ticks.slice(1).map(({ x }, index) => x - (ticks[index]?.x ?? 0));
      expect(Math.max(...steps) - Math.min(...steps)).toBeLessThan(0.03);
      const read = figureReader(svg);
      for (const [index, bar] of rowsOf(svg)
        .flatMap((row) => ofClass(row, "kept"))
        .entries()) {
        const { min, max } = extent(bar);
        const across = (ticks.at(-1)?.figure ?? 0) - (ticks[0]?.figure ?? 0);
        expect(Math.abs(read(min) - (spans[index]?.min ?? Number.NaN))).toBeLessThan(across / 1000);
        expect(Math.abs(read(max) - (spans[index]?.max ?? Number.NaN))).toBeLessThan(across / 1000);
      }
    }),
  );
});

const length: fc.Arbitrary<AdultLength> = fc
  .record({
    least: fc.double({ min: 0.5, max: 300, noNaN: true }),
    share: fc.constantFrom(1, 1.0625),
    as: fc.constantFrom("usual", "greatest"),
    sex: fc.constantFrom("male", "female", undefined),
  })
  .map(({ least, share, as, sex }) => ({
    length: least,
    measure: share === 1 ? "TL" : "SL",
    as,
    ...(sex && { sex }),
    total: { min: least, max: least * share },
  }));

const sized: fc.Arbitrary<SpeciesProfile> = fc
  .record({
    name,
    lengths: fc.array(length, { maxLength: 5 }),
    depth: fc.option(fc.double({ min: 0.02, max: 1.2, noNaN: true })),
  })
  .map(({ name, lengths, depth }) => ({
    ...danioRerio,
    names: { en: [name] },
    size: {
      ...(lengths.length > 0 && { adultLength: { value: lengths, basis: "published" as const } }),
      ...(depth !== null && { bodyDepthShare: { value: depth, basis: "published" as const } }),
    },
  }));

test("every picture of sizes is well-formed and stays on its page", () => {
  fc.assert(
    fc.property(fc.array(sized, { minLength: 1, maxLength: 12 }), units, (species, system) => {
      const svg = readSvg(sizeChart(species, { units: system }));
      expect(beyondThePage(svg)).toEqual([]);
    }),
  );
});
