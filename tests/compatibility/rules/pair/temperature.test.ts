import { expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import danioRerio from "vivary/catalog/danio-rerio";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import symphysodonAequifasciatus from "vivary/catalog/symphysodon-aequifasciatus";
import { temperature } from "../../../../src/compatibility/rules/pair/temperature";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

type Figures = Value<"water.temperature">;

const kept = (min: number, max: number, more: Partial<Figures> = {}) => ({
  species: animal(`kept-${min}-${max}`, { "water.temperature": { kept: { min, max }, ...more } }),
});
const weights = (...[a, b]: Parameters<typeof beside>) => weighed(beside(a, b)).findings;
const beside = (a: ReturnType<typeof kept>, b: ReturnType<typeof kept>) => pairBy(temperature, a, b);

test("fish that share 2 K or more have room to spare", () => {
  expect(weights(kept(20, 24), kept(22, 26))).toEqual(["favourable"]);
  expect(weights(kept(20, 24.5), kept(22, 26))).toEqual(["favourable"]);
  expect(beside(kept(20, 24), kept(22, 26)).outcome).toBe("suitable");
});

test("fish that share less can live in what they share", () => {
  expect(beside(kept(20, 24), kept(22.5, 26)).findings).toMatchObject([
    {
      weight: "restricting",
      condition: { on: "water.temperature", wanted: { min: 22.5, max: 24 } },
      measures: { shared: { min: 22.5, max: 24, unit: "degC" } },
    },
  ]);
  expect(beside(kept(20, 24), kept(24, 26)).findings).toMatchObject([
    { weight: "restricting", condition: { wanted: { min: 24, max: 24 } } },
  ]);
});

test("a gap of up to 2 K may be bridged, a wider one may not", () => {
  expect(beside(kept(18, 22), kept(24, 28)).findings).toMatchObject([
    {
      weight: "restricting",
      condition: { on: "water.temperature", wanted: { min: 22, max: 24 } },
      measures: { gap: { min: 22, max: 24, unit: "degC" } },
    },
  ]);
  expect(weights(kept(18, 22), kept(24.1, 28))).toEqual(["blocking"]);
  expect(beside(kept(18, 22), kept(24.1, 28)).outcome).toBe("unsuitable");
});

test("a range that is open on one side shares all that lies there", () => {
  const open = (kept: Figures["kept"]) => ({ species: animal("open", { "water.temperature": { kept } }) });
  expect(weights(open({ min: 20 }), open({ min: 30 }))).toEqual(["favourable"]);
  expect(weights(open({ max: 24 }), kept(20, 30))).toEqual(["favourable"]);
  expect(weights(open({ max: 20 }), open({ min: 23 }))).toEqual(["blocking"]);
});

test("what is tolerated for a while never loosens", () => {
  expect(weights(kept(18, 22, { tolerated: { min: 10, max: 30 } }), kept(26, 28))).toEqual(["blocking"]);
});

test("a best span in place of a kept one restricts at most", () => {
  const best = kept(18, 20, { optimum: { min: 18, max: 20 }, standIn: true });
  expect(weights(best, kept(26, 28))).toEqual(["restricting"]);
  expect(weights(kept(26, 28), best)).toEqual(["restricting"]);
});

test("water past the other's limit blocks, however narrow the gap", () => {
  expect(weights(kept(20, 24, { limit: { max: 25 } }), kept(25.5, 28))).toEqual(["blocking"]);
  expect(weights(kept(25.5, 28), kept(20, 24, { limit: { max: 25 } }))).toEqual(["blocking"]);
  expect(weights(kept(20, 24, { limit: { max: 25.5 } }), kept(25.5, 28))).toEqual(["restricting"]);
});

test("a tank at the shared temperature meets the condition", () => {
  const groups = [kept(20, 24), kept(23, 28)].map((group) => ({ ...group, unsexed: 1 }));
  const at = (temperatureInTank: number) =>
    weighed(planBy(temperature, groups, { water: { temperature: temperatureInTank } }));
  expect(at(23)).toEqual({ findings: [], met: ["restricting"] });
  expect(at(24)).toEqual({ findings: [], met: ["restricting"] });
  expect(at(22.9)).toEqual({ findings: ["restricting"], met: [] });
});

test("a zebra danio and a discus meet at one degree", () => {
  expect(weights({ species: danioRerio }, { species: symphysodonAequifasciatus })).toEqual(["restricting"]);
});

test("a betta and an angelfish like the same warmth; a goldfish is no company for either", () => {
  expect(weights({ species: bettaSplendens }, { species: pterophyllumScalare })).toEqual(["favourable"]);
  for (const species of [bettaSplendens, pterophyllumScalare]) {
    expect(weights({ species: carassiusAuratus }, { species })).not.toContain("favourable");
  }
});
