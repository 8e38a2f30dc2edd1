import { expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import danioRerio from "vivary/catalog/danio-rerio";
import sewelliaLineolata from "vivary/catalog/sewellia-lineolata";
import { flow } from "../../../../src/compatibility/rules/pair/flow";
import type { FlowClass } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

const from = (min: FlowClass, max: FlowClass) => ({
  species: animal(`${min}-${max}`, { "water.flow": { min, max } }),
  unsexed: 1,
});

test("one shared current is enough", () => {
  expect(pairBy(flow, from("still", "gentle"), from("gentle", "strong")).findings).toMatchObject([
    { weight: "favourable", measures: { calmest: { value: "gentle" }, strongest: { value: "gentle" } } },
  ]);
});

test("without one, each needs a place of its own", () => {
  const [calm, strong] = [from("still", "gentle"), from("moderate", "strong")];
  for (const { findings } of [pairBy(flow, calm, strong), pairBy(flow, strong, calm)]) {
    expect(findings).toMatchObject([
      { weight: "restricting", condition: { on: "tank.flow.calmest", is: ["still", "gentle"] } },
      { weight: "restricting", condition: { on: "tank.flow.strongest", is: ["moderate", "strong"] } },
    ]);
  }
});

test("a form bred with long fins is spared the strongest current of its species", () => {
  const species = animal(
    "swimmer",
    { "water.flow": { min: "gentle", max: "moderate" }, "appearance.longFins": false },
    {
      forms: {
        veil: { "appearance.longFins": true },
        tested: { "appearance.longFins": true, "water.flow": { min: "gentle", max: "moderate" } },
      },
    },
  );
  const beside = (form?: string) =>
    weighed(pairBy(flow, { species, form }, from("moderate", "strong"))).findings;
  expect(beside()).toEqual(["favourable"]);
  expect(beside("veil")).toEqual(["restricting", "restricting"]);
  expect(beside("tested")).toEqual(["favourable"]);
});

test("a tank with a calm corner and a stream meets both conditions, one current only one", () => {
  const groups = [from("still", "still"), from("strong", "strong")];
  const inTank = (calmest: FlowClass, strongest: FlowClass) =>
    weighed(planBy(flow, groups, { tank: { flow: { calmest, strongest } } }));
  expect(inTank("still", "strong")).toEqual({ findings: [], met: ["restricting", "restricting"] });
  expect(inTank("still", "moderate")).toEqual({ findings: ["restricting"], met: ["restricting"] });
  expect(inTank("gentle", "moderate")).toEqual({ findings: ["restricting", "restricting"], met: [] });
});

test("a plan that does not say leaves it open", () => {
  const { bounds, open } = planBy(flow, [from("still", "still"), from("strong", "strong")]);
  expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
  expect(open).toMatchObject([
    { input: "tank.flow.calmest", reason: "not-given", couldBe: "restricting" },
    { input: "tank.flow.strongest", reason: "not-given", couldBe: "restricting" },
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
