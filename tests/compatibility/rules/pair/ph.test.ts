import { describe, expect, test } from "vitest";
import labidochromisCaeruleus from "vivary/catalog/labidochromis-caeruleus";
import paracheirodonInnesi from "vivary/catalog/paracheirodon-innesi";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import { ph } from "../../../../src/compatibility/rules/pair/ph";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

const kept = (min: number, max: number, more: Partial<Value<"water.pH">> = {}) => ({
  species: animal(`kept-${min}-${max}`, { "water.pH": { kept: { min, max }, ...more } }),
});
const beside = (a: ReturnType<typeof kept>, b: ReturnType<typeof kept>) => pairBy(ph, a, b);
const weights = (a: ReturnType<typeof kept>, b: ReturnType<typeof kept>) => weighed(beside(a, b)).findings;

test("half a pH shared is room to spare, less restricts, and aims at what is shared", () => {
  expect(weights(kept(6, 7), kept(6.5, 8))).toEqual(["favourable"]);
  expect(beside(kept(6, 7), kept(6.75, 8)).findings).toMatchObject([
    {
      weight: "restricting",
      condition: { on: "water.pH", wanted: { min: 6.5, max: 7.25 }, aim: { min: 6.75, max: 7 } },
    },
  ]);
  expect(weights(kept(6, 7), kept(7, 8))).toEqual(["restricting"]);
});

test("one may give way by a quarter to meet the other; where both would have to, nobody can tell", () => {
  expect(beside(kept(5, 6), kept(6.25, 8)).findings).toMatchObject([
    { weight: "restricting", condition: { wanted: { min: 6, max: 6.25 } } },
  ]);
  expect(beside(kept(5, 6), kept(6.3, 8))).toMatchObject({
    outcome: "undetermined",
    findings: [{ weight: "advisory", couldBe: "blocking" }],
  });
});

test("less than a fifth of a pH cannot be held", () => {
  expect(weights(kept(5, 6), kept(6.31, 8))).toEqual(["blocking"]);
  expect(weights(kept(5, 6), kept(7.5, 8))).toEqual(["blocking"]);
});

describe("handbook classes", () => {
  const asClass = { precision: { min: "class", max: "class" } } as const;

  test("perhaps give way by half a pH: where only that lets two meet, nobody can tell", () => {
    expect(weights(kept(5, 6, asClass), kept(6.2, 8))).toEqual(["restricting"]);
    expect(beside(kept(5, 6, asClass), kept(6.5, 8)).outcome).toBe("undetermined");
    expect(weights(kept(5, 6, asClass), kept(6.8, 8, asClass))).toEqual(["advisory"]);
    expect(weights(kept(5, 6, asClass), kept(6.9, 8, asClass))).toEqual(["blocking"]);
  });

  test("never past a limit", () => {
    expect(weights(kept(5, 6, { ...asClass, limit: { max: 6.2 } }), kept(6.5, 8))).toEqual(["blocking"]);
  });
});

test("a best span in place of a kept one leaves it open", () => {
  expect(beside(kept(5, 6, { standIn: true }), kept(7.5, 8))).toMatchObject({
    outcome: "undetermined",
    findings: [{ weight: "advisory", couldBe: "blocking" }],
  });
});

test("a tank at what both can be given meets the condition", () => {
  const groups = [kept(6, 7), kept(6.8, 8)].map((group) => ({ ...group, unsexed: 1 }));
  const at = (pH: number) => weighed(planBy(ph, groups, { water: { pH } }));
  expect(at(6.9)).toEqual({ findings: [], met: ["restricting"] });
  expect(at(6.55)).toEqual({ findings: [], met: ["restricting"] });
  expect(at(6.5)).toEqual({ findings: ["restricting"], met: [] });
});

describe("decimals count as they are written", () => {
  test("7.7 to 8.2 is half a pH wide", () => {
    expect(weights(kept(7, 8.2), kept(7.7, 9))).toEqual(["favourable"]);
  });
  test("between 7.2 and 7.5 a fifth of a pH is left", () => {
    expect(weights(kept(6, 7.2), kept(7.5, 9))).toEqual(["advisory"]);
    expect(weights(kept(6, 7.2), kept(7.51, 9))).toEqual(["blocking"]);
  });
  test("a quarter from 7.2 is 7.45", () => {
    expect(weights(kept(6, 7.2), kept(7.45, 9))).toEqual(["restricting"]);
    expect(weights(kept(6, 7.2), kept(7.46, 9))).toEqual(["advisory"]);
  });
});

test("a yellow lab wants no neon's water", () => {
  expect(weights({ species: labidochromisCaeruleus }, { species: paracheirodonInnesi })).not.toContain(
    "favourable",
  );
  expect(weights({ species: labidochromisCaeruleus }, { species: poeciliaReticulata })).toEqual([
    "favourable",
  ]);
});
