import { describe, expect, test } from "vitest";
import bettaSplendens from "vivary/catalog/betta-splendens";
import carassiusAuratus from "vivary/catalog/carassius-auratus";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import { assessPlan } from "../../../../src/compatibility";
import { temperature } from "../../../../src/compatibility/rules/pair/temperature";
import { waterTemperature } from "../../../../src/compatibility/rules/plan/water-temperature";
import type { TraitValue as Value } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy, planBy, planOf, weighed } from "../../judging";

type Figures = Value<"water.temperature">;

const kept = (min: number, max: number, more: Partial<Figures> = {}) => ({
  species: animal(`kept-${min}-${max}`, { "water.temperature": { kept: { min, max }, ...more } }),
});
const beside = (a: ReturnType<typeof kept>, b: ReturnType<typeof kept>) => pairBy(temperature, a, b);
const weights = (...[a, b]: Parameters<typeof beside>) => weighed(beside(a, b)).findings;

test("fish that share 2 K or more have room to spare", () => {
  expect(beside(kept(20, 24), kept(22, 26)).findings).toMatchObject([
    { weight: "favourable", measures: { shared: { min: 22, max: 24, unit: "degC" } } },
  ]);
  expect(beside(kept(20, 24), kept(22, 26)).outcome).toBe("suitable");
});

test("fish that share less live in what each end gives way to, and aim at what they share", () => {
  const verdict = beside(kept(20, 24), kept(23, 26));
  expect(verdict.findings).toMatchObject([
    {
      weight: "restricting",
      condition: { on: "water.temperature", wanted: { min: 22.5, max: 24.5 }, aim: { min: 23, max: 24 } },
      measures: { shared: { min: 23, max: 24, unit: "degC" } },
    },
  ]);
  expect(verdict.conditions).toMatchObject([
    { on: "water.temperature", wanted: { min: 22.5, max: 24.5 }, aim: { min: 23, max: 24 } },
  ]);
});

test("fish that share half a degree meet in what each end gives way to", () => {
  expect(beside(kept(18, 22.5), kept(22, 28)).findings).toMatchObject([
    { weight: "restricting", condition: { wanted: { min: 21.5, max: 23 }, aim: { min: 22, max: 22.5 } } },
  ]);
});

test("fish that meet at one figure alone are kept at it", () => {
  expect(beside(kept(18, 22), kept(22, 28)).findings).toMatchObject([
    { weight: "restricting", condition: { wanted: { min: 21.5, max: 22.5 }, aim: { min: 22, max: 22 } } },
  ]);
});

test("fish that come no nearer than half a degree meet in what each end gives way to; farther apart, nowhere", () => {
  expect(weights(kept(18, 22), kept(22.5, 28))).toEqual(["restricting"]);
  expect(beside(kept(18, 22), kept(22.6, 28)).findings).toMatchObject([
    {
      weight: "blocking",
      from: 0,
      to: 1,
      measures: { from: { min: 18, max: 22 }, to: { min: 22.6, max: 28 } },
    },
  ]);
  expect(beside(kept(18, 22), kept(26, 28)).outcome).toBe("unsuitable");
});

test("water that both are kept in, and that is the best for neither, is told: a guppy beside discus", () => {
  const cool = kept(18, 28, { optimum: { min: 22, max: 26 } });
  const hot = (min: number) => kept(26, 30, { optimum: { min, max: 30 } });
  expect(beside(cool, hot(28)).conditions).toMatchObject([
    { on: "water.temperature", aim: { min: 26, max: 28 } },
  ]);
  expect(weights(cool, hot(27))).toEqual(["favourable"]);
  expect(weights(cool, kept(26, 30))).toEqual(["favourable"]);
  expect(weights(kept(18, 28), hot(28))).toEqual(["favourable"]);
});

describe("fish that meet at the ends alone of what they are kept in", () => {
  const best = (min: number, max: number) => kept(4, 24, { optimum: { min, max } });

  test("are kept apart if it is past the best of one: it would live there for good", () => {
    expect(beside(best(18, 22), kept(24, 30)).findings).toMatchObject([
      { weight: "blocking", measures: { shared: { min: 24, max: 24 } } },
    ]);
    expect(weights(kept(24, 30), best(18, 22))).toEqual(["blocking"]);
    expect(weights(kept(20, 26), kept(26, 30, { optimum: { min: 28, max: 30 } }))).toEqual(["blocking"]);
  });

  test("stay together if it is among the best of both, whose ends give way as others do", () => {
    expect(weights(best(18, 24), kept(24, 30))).toEqual(["restricting"]);
    expect(weights(best(18, 23.5), kept(24, 30))).toEqual(["restricting"]);
    expect(weights(best(18, 23.4), kept(24, 30))).toEqual(["blocking"]);
  });

  test("stay together where nobody has said what is best", () => {
    expect(weights(kept(4, 24), kept(24, 30))).toEqual(["restricting"]);
  });

  test("a whole degree of what both are kept in is more than an end", () => {
    const indoors = kept(16, 24, { optimum: { min: 18, max: 22 } });
    expect(weights(indoors, kept(23, 30))).toEqual(["restricting"]);
    expect(weights(indoors, kept(23.1, 30))).toEqual(["blocking"]);
  });

  test("of a span that holds summer and winter the last tenth is an end, past the best alone", () => {
    expect(weights(best(18, 22), kept(22, 30))).toEqual(["blocking"]);
    expect(weights(kept(22, 30), best(18, 22))).toEqual(["blocking"]);
    expect(weights(best(18, 22), kept(21.9, 30))).toEqual(["favourable"]);
    expect(weights(best(18, 23), kept(22.1, 30))).toEqual(["restricting"]);
    expect(weights(kept(4, 24), kept(22.1, 30))).toEqual(["restricting"]);
  });
});

test("where only a handbook's class, which gives way by twice as much, lets two meet, nobody can tell", () => {
  const asClass = kept(18, 22, { precision: { max: "class" } });
  expect(weights(kept(18, 22), kept(23, 28))).toEqual(["blocking"]);
  expect(beside(asClass, kept(23, 28))).toMatchObject({
    outcome: "undetermined",
    findings: [{ weight: "advisory", couldBe: "blocking" }],
  });
  expect(beside(asClass, kept(22.5, 28)).findings).toMatchObject([
    { weight: "restricting", condition: { wanted: { min: 22, max: 23 } } },
  ]);
  expect(weights(kept(18, 22, { precision: { min: "class" } }), kept(23, 28))).toEqual(["blocking"]);
});

describe("a limit", () => {
  test("is never passed, however far the end would give way", () => {
    expect(beside(kept(20, 24, { limit: { max: 24.2 } }), kept(23.2, 28)).findings).toMatchObject([
      { weight: "restricting", condition: { wanted: { min: 22.7, max: 24.2 } } },
    ]);
    expect(weights(kept(20, 24, { limit: { max: 24.2 } }), kept(24.4, 28))).toEqual(["blocking"]);
    expect(weights(kept(20, 24, { limit: { max: 30 } }), kept(24.4, 28))).toEqual(["restricting"]);
  });

  test("holds for classes as well", () => {
    const asClass = kept(20, 24, { limit: { max: 24.2 }, precision: { max: "class" } });
    expect(weights(asClass, kept(24.5, 28))).toEqual(["blocking"]);
  });
});

test("a range that is open on one side shares all that lies there", () => {
  const open = (span: Figures["kept"]) => ({
    species: animal("open", { "water.temperature": { kept: span } }),
  });
  expect(weights(open({ min: 20 }), open({ min: 30 }))).toEqual(["favourable"]);
  expect(weights(open({ max: 24 }), kept(20, 30))).toEqual(["favourable"]);
  expect(weights(open({ max: 20 }), open({ min: 23 }))).toEqual(["blocking"]);
});

test("what is tolerated for a while never loosens", () => {
  expect(weights(kept(18, 22, { tolerated: { min: 10, max: 30 } }), kept(26, 28))).toEqual(["blocking"]);
});

test("a best span in place of a kept one never blocks: nobody can tell what lies beyond it", () => {
  const best = kept(18, 20, { optimum: { min: 18, max: 20 }, standIn: true });
  for (const verdict of [beside(best, kept(26, 28)), beside(kept(26, 28), best)]) {
    expect(verdict.findings).toMatchObject([{ weight: "advisory", couldBe: "blocking" }]);
    expect(verdict.outcome).toBe("undetermined");
    expect(verdict.open.map((question) => question.of)).toEqual([0, 1]);
  }
});

test("a best span in place of a kept one leaves a plan of both open as it does the two", () => {
  const best = kept(18, 20, { optimum: { min: 18, max: 20 }, standIn: true });
  const groups = [best, kept(26, 28)].map((group) => ({ ...group, unsexed: 1 }));
  const { outcome, bounds, findings } = assessPlan(planOf(groups), {
    rules: [temperature, waterTemperature],
  });
  expect(outcome).toBe("undetermined");
  expect(bounds.atWorst).toBe("unsuitable");
  expect(findings.filter(({ rule }) => rule === "conditions-exclude")).toMatchObject([
    { weight: "advisory", couldBe: "blocking" },
  ]);
  const plain = [kept(18, 20), kept(26, 28)].map((group) => ({ ...group, unsexed: 1 }));
  expect(assessPlan(planOf(plain), { rules: [waterTemperature] }).outcome).toBe("unsuitable");
});

test("a tank at what both can be given meets the condition", () => {
  const groups = [kept(20, 24), kept(23, 28)].map((group) => ({ ...group, unsexed: 1 }));
  const at = (inTank: number) => weighed(planBy(temperature, groups, { water: { temperature: inTank } }));
  expect(at(22.5)).toEqual({ findings: [], met: ["restricting"] });
  expect(at(24.5)).toEqual({ findings: [], met: ["restricting"] });
  expect(at(22.4)).toEqual({ findings: ["restricting"], met: [] });
  expect(at(24.6)).toEqual({ findings: ["restricting"], met: [] });
});

test("three kinds of which each two agree are joined: no water is left for all", () => {
  const groups = [kept(20, 24), kept(23, 26), kept(24.6, 27)].map((group) => ({ ...group, unsexed: 1 }));
  expect(planBy(temperature, groups.slice(0, 2)).outcome).toBe("suitable");
  expect(weighed(planBy(temperature, groups)).findings).toContain("blocking");
});

test("a betta and an angelfish like the same warmth; a goldfish is no company for either", () => {
  expect(weights({ species: bettaSplendens }, { species: pterophyllumScalare })).toEqual(["favourable"]);
  for (const species of [bettaSplendens, pterophyllumScalare]) {
    expect(weights({ species: carassiusAuratus }, { species })).toEqual(["blocking"]);
  }
});
