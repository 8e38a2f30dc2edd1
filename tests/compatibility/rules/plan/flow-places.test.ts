import { expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import sewelliaLineolata from "vivary/catalog/sewellia-lineolata";
import { flowPlaces } from "../../../../src/compatibility/rules/plan/flow-places";
import type { FlowClass } from "../../../../src/species";
import { animal } from "../../animals";
import { inputsAsked, planBy, weighed } from "../../judging";

const inTank = (
  [min, max]: readonly [FlowClass, FlowClass],
  flow?: { calmest: FlowClass; strongest: FlowClass },
) =>
  planBy(
    flowPlaces,
    [{ species: animal("fish", { "water.flow": { min, max } }), unsexed: 1 }],
    flow && { tank: { flow } },
  );

test("a tank with its current has a place for it", () => {
  const twice = { findings: [], met: ["restricting", "restricting"] };
  expect(weighed(inTank(["gentle", "moderate"], { calmest: "gentle", strongest: "gentle" }))).toEqual(twice);
  expect(weighed(inTank(["gentle", "moderate"], { calmest: "still", strongest: "strong" }))).toEqual(twice);
  expect(weighed(inTank(["gentle", "moderate"], { calmest: "moderate", strongest: "strong" }))).toEqual(
    twice,
  );
});

test("a tank that is too strong everywhere lacks a calm place", () => {
  expect(inTank(["still", "gentle"], { calmest: "moderate", strongest: "strong" }).findings).toMatchObject([
    { weight: "restricting", condition: { on: "tank.flow.calmest", wanted: { oneOf: ["still", "gentle"] } } },
  ]);
});

test("a tank that is too calm everywhere lacks a stream", () => {
  expect(inTank(["moderate", "strong"], { calmest: "still", strongest: "gentle" }).findings).toMatchObject([
    {
      weight: "restricting",
      condition: { on: "tank.flow.strongest", wanted: { oneOf: ["moderate", "strong"] } },
    },
  ]);
});

test("a plan that does not say leaves it open, as far as it could matter", () => {
  const { bounds, open } = inTank(["gentle", "moderate"]);
  expect(bounds).toEqual({ atBest: "conditional", atWorst: "conditional" });
  expect(open).toMatchObject([
    { on: "tank.flow.calmest", reason: "not-given" },
    { on: "tank.flow.strongest", reason: "not-given" },
  ]);
  expect(inputsAsked(inTank(["moderate", "strong"]))).toEqual(["tank.flow.strongest"]);
  expect(inTank(["still", "strong"]).open).toEqual([]);
});

test("a stream that a hillstream loach needs tires a betta", () => {
  const stream = { tank: { flow: { calmest: "moderate", strongest: "strong" } } } as const;
  expect(planBy(flowPlaces, [{ species: sewelliaLineolata, unsexed: 5 }], stream).outcome).toBe("suitable");
  expect(planBy(flowPlaces, [{ species: bettaSplendens, males: 1 }], stream).outcome).toBe("conditional");
});
