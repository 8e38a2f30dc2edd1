import fc from "fast-check";

/** Quarters from −20 to 20: exact in binary, and few enough that ranges often touch, coincide and nest. */
export const ends = fc.integer({ min: -80, max: 80 }).map((quarters) => quarters / 4);

/** Closed ranges, zero width among them. */
export const ranges = fc.tuple(ends, ends).map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }));

/** Closed ranges with a width. */
export const wideRanges = ranges.filter(({ min, max }) => min < max);

/** Closed and one-sided ranges. */
export const partialRanges = fc.oneof(
  ranges,
  ends.map((min) => ({ min })),
  ends.map((max) => ({ max })),
);

/** Closed ranges with ends of any size that leave their widths finite, so that rounding shows. */
export const roughRanges = fc
  .tuple(fc.double({ min: -1e9, max: 1e9, noNaN: true }), fc.double({ min: -1e9, max: 1e9, noNaN: true }))
  .map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }));
