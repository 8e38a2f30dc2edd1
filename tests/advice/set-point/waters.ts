import fc from "fast-check";
import type { PartialRange } from "../../../src/ranges";
import type { Figures, SpeciesProfile } from "../../../src/species";
import { animal } from "../../compatibility/animals";

/** Figures whose spans lie on a coarse grid, so that they often touch, coincide and lie apart by exactly a threshold. */
function figures(from: number, step: number): fc.Arbitrary<Figures<PartialRange>> {
  const span = fc
    .tuple(fc.integer({ min: 0, max: 8 }), fc.integer({ min: 0, max: 6 }))
    .map(([start, width]) => ({ min: from + start * step, max: from + (start + width) * step }));
  return fc
    .tuple(span, fc.constantFrom("own", "class", "limited", "borne", "stands in", "best in the middle"))
    .map(([kept, how]) => {
      const wider = { min: kept.min - step, max: kept.max + step };
      if (how === "class") return { kept, precision: { max: "class" as const } };
      const middle = (kept.min + kept.max) / 2;
      if (how === "best in the middle") return { kept, optimum: { min: middle, max: middle } };
      if (how === "limited") return { kept, limit: kept };
      if (how === "borne") return { kept, tolerated: wider };
      return how === "own" ? { kept } : { kept, optimum: kept, standIn: true as const };
    });
}

const stated = fc.record(
  {
    "water.temperature": figures(18, 1),
    "water.pH": fc.oneof({ weight: 3, arbitrary: figures(5.5, 0.25) }, figures(5.5, 0.1)),
    "water.generalHardness": figures(0, 2),
    "water.salinity": figures(0, 1),
  },
  { requiredKeys: ["water.temperature", "water.pH"] },
);

/** Some animals of which nothing but the water is known. */
export const swimmers = (most: number): fc.Arbitrary<readonly SpeciesProfile[]> =>
  fc
    .array(stated, { minLength: 1, maxLength: most })
    .map((list) => list.map((traits, index) => animal(`fish-${index}`, traits)));

/** Kept in fresh water of neutral pH at these temperatures. */
export const keptAt = (min: number, max: number, further: Partial<Figures<PartialRange>> = {}) =>
  animal(`kept-at-${min}-to-${max}`, {
    "water.temperature": { kept: { min, max }, ...further },
    "water.pH": { kept: { min: 6, max: 8 } },
    "water.generalHardness": { kept: { min: 2, max: 20 } },
    "water.salinity": { kept: { min: 0, max: 0.5 } },
  });
