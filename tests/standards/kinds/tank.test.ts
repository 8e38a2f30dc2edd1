import { describe, expect, test } from "vitest";
import { comparisonOf } from "../../../src/standards/comparison-of";
import { surveyedPlan } from "../../../src/standards/surveyed-plan";
import type { TankBase } from "../../../src/tank";
import { planOf } from "../../compatibility/judging";
import { fishOfLength, surveyOf } from "../surveys";

const some = [{ species: fishOfLength("a", 3), unsexed: 1 }];

describe("the shape of a tank", () => {
  const bases: readonly (readonly [TankBase, curved: string, sphere: string])[] = [
    [{ shape: "rectangle", length: 60, width: 30 }, "met", "met"],
    [
      {
        shape: "polygon",
        points: [
          [0, 0],
          [60, 0],
          [0, 60],
        ],
      },
      "met",
      "met",
    ],
    [{ shape: "bowed", length: 60, width: 30, bow: 0 }, "met", "met"],
    [{ shape: "bowed", length: 60, width: 30, bow: 5 }, "not-met", "met"],
    [{ shape: "sector", radius: 60, angle: 90 }, "not-met", "met"],
    [{ shape: "circle", diameter: 30 }, "not-met", "undetermined"],
  ];

  test.each(bases)("%o", (base, curved, sphere) => {
    const plan = surveyOf(some, { base, height: 40 });
    const has = { of: "shape of the base", value: base.shape };
    expect(comparisonOf({ kind: "straight-walls" }, plan)).toMatchObject({ has, answer: curved });
    expect(comparisonOf({ kind: "no-sphere" }, plan)).toMatchObject({ has, answer: sphere });
  });
});

describe("a floor of hardness", () => {
  const at = (generalHardness: number) =>
    comparisonOf(
      { kind: "hardness-floor", least: { min: 4, max: 5 } },
      surveyedPlan(planOf(some, { water: { generalHardness } })),
    );

  test("is met from its upper end on, and below it hangs on the source water", () => {
    expect(at(5)).toMatchObject({ asked: { min: 4, max: 5, unit: "dH" }, answer: "met" });
    for (const soft of [0, 3.9, 4.5]) {
      expect(at(soft)).toMatchObject({ answer: "undetermined", open: { reason: "not-given" } });
    }
  });
});

test("what is untold stays open with its reason", () => {
  for (const because of ["not-given", "no-figure", "not-read"] as const) {
    expect(comparisonOf({ kind: "untold", because }, surveyOf(some))).toEqual({
      answer: "undetermined",
      open: { reason: because },
    });
  }
});
