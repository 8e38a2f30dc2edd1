import { expectTypeOf, test } from "vitest";
import type { Finding, Measures, RuleId, Words } from "../../../src/compatibility";
import type { PlannedWaterRule } from "../../../src/compatibility/inner";
import type { ActRule } from "../../../src/report/matters/acts";
import { type FindingBy, isBy, type MeasureName } from "../../../src/report/matters/by-rule";
import { plannedWaterRules } from "../../../src/report/matters/water-rules";

declare const finding: Finding;

/** The rules that declare a measure. */
type RuleWith<Name extends MeasureName> = {
  [Id in RuleId]: Name extends keyof Measures[Id] ? Id : never;
}[RuleId];

test("a finding is by rules that there are", () => {
  if (isBy(finding, ["lid", "predation"])) {
    expectTypeOf(finding).toEqualTypeOf<FindingBy<"lid" | "predation">>();
    expectTypeOf(finding.rule).toEqualTypeOf<"lid" | "predation">();
  }
  // @ts-expect-error: misspelt
  isBy(finding, ["acts-own-kin"]);
  // @ts-expect-error: the rule of an app, of which the library knows nothing
  isBy(finding, ["x-own"]);
});

test("its measures are those that all these rules have", () => {
  if (!isBy(finding, plannedWaterRules)) return;
  expectTypeOf(finding.measures?.kept).toExtend<Measures[PlannedWaterRule]["kept"]>();
  // @ts-expect-error: misspelt
  finding.measures?.keptt;
});

test("a measure is one of those there are", () => {
  expectTypeOf<"planned">().toExtend<MeasureName>();
  // @ts-expect-error: misspelt
  expectTypeOf<"plannedd">().toExtend<MeasureName>();
});

test("no rule is left out that tells of one sex, or of the water that animals are kept in", () => {
  expectTypeOf<RuleWith<"doer">>().toEqualTypeOf<ActRule>();
  expectTypeOf<RuleWith<"act">>().toEqualTypeOf<ActRule>();
  expectTypeOf<RuleWith<"kept">>().toEqualTypeOf<PlannedWaterRule>();
  expectTypeOf<Measures[ActRule]["doer"]>().toEqualTypeOf<{ readonly value: Words["sex"] } | undefined>();
});
