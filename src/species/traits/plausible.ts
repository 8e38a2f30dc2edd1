import { frozen } from "../../frozen";
import type { TraitPath } from "./values";

/** Values outside this span are mistakes of unit or typing. */
export interface PlausibleSpan {
  readonly min: number;
  readonly max: number;
}

/** Standard length as a share of total length. */
export const plausibleShare: PlausibleSpan = { min: 0.5, max: 1 };

/**
 * Where figures of a trait can lie, in the trait's unit: so wide that only a slip of unit or of a decimal point lies outside.
 * Common practice, no source.
 */
export const plausibleSpans: { readonly [Path in TraitPath]?: PlausibleSpan } = /* @__PURE__ */ frozen({
  "size.adultLength": { min: 0.5, max: 300 },
  "size.standardShare": plausibleShare,
  "size.bodyDepthShare": { min: 0.02, max: 1 },
  "size.grownAt": { min: 0.5, max: 240 },
  "size.lifespan": { min: 0.3, max: 150 },
  "water.temperature": { min: -2, max: 48 },
  "water.pH": { min: 3, max: 11 },
  "water.generalHardness": { min: 0, max: 60 },
  "water.carbonateHardness": { min: 0, max: 60 },
  "water.coolSeason": { min: -2, max: 30 },
  "water.salinity": { min: 0, max: 120 },
  "space.baseLength": { min: 10, max: 1500 },
  "space.footprint": { min: 100, max: 500000 },
  "space.furtherFootprint": { min: 5, max: 100000 },
  "space.height": { min: 10, max: 300 },
  "space.territory": { min: 10, max: 200000 },
  "social.largestGroup": { min: 1, max: 1000 },
  "social.femalesPerMale": { min: 0, max: 20 },
  "predation.eats": { min: 0.1, max: 200 },
  "reproduction.breedsFrom": { min: 0.5, max: 240 },
});
