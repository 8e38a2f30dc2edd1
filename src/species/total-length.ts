import type { AdultLength, LengthMeasure } from "./types";

/**
 * Standard length as a share of total length, least and greatest, of fishes with a tail fin of common size.
 * FishBase's default ratio of total to standard length, 1.22, is a share of 0.82; the span around it is from memory.
 */
const standardShare = { min: 0.8, max: 0.85 } as const;

/**
 * Total length in cm of a fish measured as stated: a span where that was another measure or unstated.
 * Shells, discs and bodies without a tail fin are taken as they are.
 */
export function totalLength(length: number, measure: LengthMeasure): AdultLength["total"] {
  if (measure === "SL") return { min: length / standardShare.max, max: length / standardShare.min };
  if (measure === "unstated" || measure === "FL") return { min: length, max: length / standardShare.min };
  return { min: length, max: length };
}

/** Standard length in cm that belongs to a total length: the span of shares. */
export function standardLength(total: number): AdultLength["total"] {
  return { min: total * standardShare.min, max: total * standardShare.max };
}
