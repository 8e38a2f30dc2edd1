import { inDomain, objectOf, refuseOthers } from "../checks";
import { decimal } from "../decimal";
import { frozen } from "../frozen";
import type { Range } from "../ranges";

/** Coarse foam whose surface is asked for. */
export interface FoamAreaInput {
  /** Of the foam, L. */
  readonly volume: number;
}

/** A surface that foam is to have. */
export interface FoamVolumeInput {
  /** Surface of the media, m². */
  readonly mediaArea: number;
}

/** Where {@link foamArea} and {@link foamVolume} answer: up to ten thousand cubic metres of foam. */
export const coarseFoamDomain = /* @__PURE__ */ frozen({
  /** L. */
  volume: { min: 0, max: 10_000_000 },
  /** m². */
  mediaArea: { min: 0, max: 10_000_000 },
} as const);

/**
 * Surface of a litre of coarse foam (20 pores an inch), m²: aquaculture media tables such as Timmons & Ebeling, from
 * memory.
 */
export const areaOfALitre = { min: 1, max: 1.6 } as const;

/**
 * The surface of so much coarse foam (20 pores an inch), m²: the least and the most. A plan that errs to caution counts on
 * the least.
 *
 * Source: 1.0 to 1.6 m² a litre by aquaculture media tables such as Timmons & Ebeling, from memory. Foam that is clogged has
 * less, and so has coarser foam; finer foam has more, and clogs sooner.
 *
 * @throws OutsideDomainError outside {@link coarseFoamDomain}.
 * @throws InvalidInputError if the volume is missing or not finite; for any other field.
 *
 * @example
 * ```ts
 * import { filterCapacity, foamArea } from "vivary/load";
 *
 * foamArea({ volume: 2 }); // => { min: 2, max: 3.2 }
 * filterCapacity({ mediaArea: foamArea({ volume: 2 }).min, age: 90 }).min; // => 40
 * ```
 */
export function foamArea(foam: FoamAreaInput): Range {
  const { volume, ...others } = objectOf(foam, "");
  refuseOthers(others, "");
  const litres = inDomain(volume, "volume", coarseFoamDomain.volume, "L");
  return { min: decimal(litres * areaOfALitre.min), max: decimal(litres * areaOfALitre.max) };
}

/**
 * How much coarse foam (20 pores an inch) has so much surface, L: the least and the most, of which the most is enough in any
 * case. The inverse of {@link foamArea}, with its source.
 *
 * @throws OutsideDomainError outside {@link coarseFoamDomain}.
 * @throws InvalidInputError if the area is missing or not finite; for any other field.
 *
 * @example
 * ```ts
 * import { foamVolume } from "vivary/load";
 *
 * foamVolume({ mediaArea: 3.2 }); // => { min: 2, max: 3.2 }
 * ```
 */
export function foamVolume(media: FoamVolumeInput): Range {
  const { mediaArea, ...others } = objectOf(media, "");
  refuseOthers(others, "");
  const area = inDomain(mediaArea, "mediaArea", coarseFoamDomain.mediaArea, "m2");
  return { min: decimal(area / areaOfALitre.max), max: decimal(area / areaOfALitre.min) };
}
