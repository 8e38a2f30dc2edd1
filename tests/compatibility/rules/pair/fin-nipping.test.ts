import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import osteogasterAenea from "vivary/catalog/osteogaster-aenea";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import { finNipping } from "../../../../src/compatibility/rules/pair/fin-nipping";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

type Target = Value<"temperament.acts">[number]["target"];

const nipper = (target: Target) =>
  animal("nipper", { "temperament.acts": [{ does: "nips-fins", target }], "appearance.longFins": false });
const finned = (long?: boolean) =>
  animal("finned", {
    "temperament.acts": [],
    ...(long !== undefined && { "appearance.longFins": long }),
  });
const weights = (target: Target, long?: boolean) =>
  weighed(pairBy(finNipping, { species: nipper(target) }, { species: finned(long) })).findings;

test("who nips long fins nips long fins only", () => {
  expect(weights("long-finned", true)).toEqual(["restricting"]);
  expect(weights("long-finned", false)).toEqual([]);
});

test("who nips any fins harms long ones more", () => {
  expect(weights("any", true)).toEqual(["restricting"]);
  expect(weights("any", false)).toEqual(["advisory"]);
});

test("fins nobody described count as long, and stay open", () => {
  const { outcome, bounds, open } = pairBy(
    finNipping,
    { species: nipper("long-finned") },
    { species: finned() },
  );
  expect(outcome).toBe("conditional");
  expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
  expect(open).toMatchObject([{ of: 1, trait: "appearance.longFins", reason: "missing" }]);
});

test("several such acts are one reason", () => {
  const species = animal("nipper", {
    "temperament.acts": [
      { does: "nips-fins", target: "long-finned" },
      { does: "nips-fins", target: "any" },
    ],
  });
  expect(weighed(pairBy(finNipping, { species }, { species: finned(true) })).findings).toEqual([
    "restricting",
  ]);
});

describe("a bred form", () => {
  const forms = { veil: { "appearance.longFins": true }, short: { "appearance.longFins": false } } as const;
  const bred = animal("bred", { "temperament.acts": [], "appearance.longFins": true }, { forms });

  test("with short fins is out of danger, one with long fins is not", () => {
    const beside = (form?: string) =>
      weighed(
        planBy(finNipping, [
          { species: nipper("long-finned"), unsexed: 6 },
          { species: bred, form, unsexed: 6 },
        ]),
      );
    expect(beside("short")).toEqual({ findings: [], met: [] });
    expect(beside("veil")).toEqual({ findings: ["restricting"], met: [] });
    expect(beside()).toEqual({ findings: ["restricting"], met: [] });
  });

  test("is nipped by its own kind", () => {
    const nips = animal(
      "nips",
      { "temperament.acts": [{ does: "nips-fins", target: "long-finned" }], "appearance.longFins": false },
      { forms },
    );
    expect(weighed(pairBy(finNipping, { species: nips }, { species: nips, form: "veil" })).findings).toEqual([
      "restricting",
    ]);
    expect(weighed(pairBy(finNipping, { species: nips }, { species: nips })).findings).toEqual([]);
  });
});

test("fins that sources dispute keep a plan between both answers", () => {
  const disputed = animal(
    "finned",
    { "temperament.acts": [], "appearance.longFins": false },
    { also: [{ "appearance.longFins": true }] },
  );
  const nips = nipper("long-finned");
  const certain = planBy(finNipping, [
    { species: nips, unsexed: 6 },
    { species: finned(true), unsexed: 6 },
  ]);
  expect(certain.outcome).toBe("conditional");
  const { bounds } = planBy(finNipping, [
    { species: nips, unsexed: 6 },
    { species: disputed, unsexed: 6 },
  ]);
  expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
});

test("tiger barbs nip angelfish, guppies and bettas, and let a cory be", () => {
  for (const species of [pterophyllumScalare, poeciliaReticulata, bettaSplendens]) {
    expect(weighed(pairBy(finNipping, { species: puntigrusTetrazona }, { species })).findings).toEqual([
      "restricting",
    ]);
  }
  expect(
    weighed(pairBy(finNipping, { species: puntigrusTetrazona }, { species: osteogasterAenea })).findings,
  ).toEqual([]);
});
