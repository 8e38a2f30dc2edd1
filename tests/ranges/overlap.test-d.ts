import { expectTypeOf, test } from "vitest";
import { overlap, type PartialRange, type Range, width } from "../../src/ranges";

declare const closed: Range;
declare const partial: PartialRange;

test("closed ranges share a closed range", () => {
  expectTypeOf(overlap(closed, closed, closed)).toEqualTypeOf<Range | undefined>();
  expectTypeOf(overlap(closed, partial)).toEqualTypeOf<PartialRange | undefined>();
  expectTypeOf(overlap(closed, closed, partial)).toEqualTypeOf<PartialRange | undefined>();
});

test("only a one-sided range may lack a width", () => {
  expectTypeOf(width(closed)).toEqualTypeOf<number>();
  expectTypeOf(width(partial)).toEqualTypeOf<number | undefined>();
});
