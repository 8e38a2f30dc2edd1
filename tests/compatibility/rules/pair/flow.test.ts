import { expect, test } from "vitest";
import amatitlaniaNigrofasciata from "vivary/catalog/amatitlania-nigrofasciata";
import bettaSplendens from "vivary/catalog/betta-splendens";
import danioRerio from "vivary/catalog/danio-rerio";
import sewelliaLineolata from "vivary/catalog/sewellia-lineolata";
import { flow } from "../../../../src/compatibility/rules/pair/flow";
import type { FlowClass } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

const from = (min: FlowClass, max: FlowClass) => ({
  species: animal(`${min}-${max}`, { "water.flow": { min, max } }),
});
/** One of them in a plan. */
const one = (min: FlowClass, max: FlowClass) => ({ ...from(min, max), unsexed: 1 });

test("one shared current is enough", () => {
  expect(pairBy(flow, from("still", "gentle"), from("gentle", "strong")).findings).toMatchObject([
    { weight: "favourable", measures: { calmest: { value: "gentle" }, strongest: { value: "gentle" } } },
  ]);
});

test("without one, each needs a place of its own", () => {
  const [calm, strong] = [from("still", "gentle"), from("moderate", "strong")];
  for (const { findings } of [pairBy(flow, calm, strong), pairBy(flow, strong, calm)]) {
    expect(findings).toMatchObject([
      {
        weight: "restricting",
        condition: { on: "tank.flow.calmest", wanted: { oneOf: ["still", "gentle"] } },
      },
      {
        weight: "restricting",
        condition: { on: "tank.flow.strongest", wanted: { oneOf: ["moderate", "strong"] } },
      },
    ]);
  }
});

test("a form bred with long fins is spared the strongest current of its species", () => {
  const beside = (form?: string) => {
    const party = { species: amatitlaniaNigrofasciata, form };
    return weighed(pairBy(flow, party, from("moderate", "strong"))).findings;
  };
  expect(beside()).toEqual(["favourable"]);
  expect(beside("pink")).toEqual(["favourable"]);
  expect(beside("long-fin")).toEqual(["restricting", "restricting"]);
});

test("a tank with a calm corner and a stream meets both conditions, one current only one", () => {
  const groups = [one("still", "still"), one("strong", "strong")];
  const inTank = (calmest: FlowClass, strongest: FlowClass) =>
    weighed(planBy(flow, groups, { tank: { flow: { calmest, strongest } } }));
  expect(inTank("still", "strong")).toEqual({ findings: [], met: ["restricting", "restricting"] });
  expect(inTank("still", "moderate")).toEqual({ findings: ["restricting"], met: ["restricting"] });
  expect(inTank("gentle", "moderate")).toEqual({ findings: ["restricting", "restricting"], met: [] });
});

test("a plan that does not say leaves it open", () => {
  const { bounds, open } = planBy(flow, [one("still", "still"), one("strong", "strong")]);
  expect(bounds).toEqual({ atBest: "conditional", atWorst: "conditional" });
  expect(open).toMatchObject([
    { on: "tank.flow.calmest", reason: "not-given", couldBe: "restricting" },
    { on: "tank.flow.strongest", reason: "not-given", couldBe: "restricting" },
  ]);
});

test("a betta and a hillstream loach need a calm corner and a stream; a danio goes along with a betta", () => {
  const [betta, loach, danio] = [bettaSplendens, sewelliaLineolata, danioRerio].map((species) => ({
    species,
  }));
  expect(betta && loach && weighed(pairBy(flow, betta, loach)).findings).toEqual([
    "restricting",
    "restricting",
  ]);
  expect(betta && danio && weighed(pairBy(flow, betta, danio)).findings).toEqual(["favourable"]);
});
