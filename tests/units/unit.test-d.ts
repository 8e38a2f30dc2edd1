import { expectTypeOf, test } from "vitest";
import type { FactUnit } from "../../src/plan";
import { convert, type LengthUnit, type Unit, type UnitLike, type UnitsByMeasure } from "../../src/units";

test("a unit converts only into units of its measure", () => {
  expectTypeOf(convert<"cm">)
    .parameter(2)
    .toEqualTypeOf<LengthUnit>();
  expectTypeOf<UnitLike<"degC">>().toEqualTypeOf<"degC" | "degF" | "K">();
  expectTypeOf<"L">().not.toExtend<UnitLike<"cm">>();
});

test("units known only at run time are let through to the run-time check", () => {
  expectTypeOf<UnitLike<Unit>>().toEqualTypeOf<Unit>();
});

test("every unit has a measure, and none has two", () => {
  expectTypeOf<UnitsByMeasure[keyof UnitsByMeasure]>().toEqualTypeOf<Unit>();
});

test("every unit of a fact of a plan converts, but for shares", () => {
  expectTypeOf<Exclude<FactUnit, "1">>().toExtend<Unit>();
});
