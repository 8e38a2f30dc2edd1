import fc from "fast-check";

/** Masses of fishes from fry to catfish, g. */
export const masses = fc.double({ min: 0.01, max: 50_000, noNaN: true });
