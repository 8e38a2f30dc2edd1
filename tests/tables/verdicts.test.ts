import { expect, test } from "vitest";
import { findSpecies } from "../../src/catalog";
import { assessPair, assessPlan } from "../../src/compatibility";
import { InvalidInputError } from "../../src/errors";
import { applyForm, type SpeciesProfile } from "../../src/species";
import { verdictRows } from "../../src/tables";
import { expectRefused } from "../refused";

const named = (name: string): SpeciesProfile => {
  const [found] = findSpecies(name);
  if (!found) throw new Error(`${name} is not in the catalog.`);
  return found;
};
const pair = assessPair({ species: named("angelfish") }, { species: named("neon tetra") });
const plan = assessPlan({
  tank: {
    base: { shape: "rectangle", length: 100, width: 40 },
    height: 45,
    lid: true,
    cover: 0.6,
    openWater: 0.3,
  },
  groups: [{ species: named("danio rerio"), unsexed: 6 }],
});
const rows = verdictRows([pair, plan]);

test("every finding of every verdict has its rows, those whose condition is met among them", () => {
  const told = [
    ...new Set(rows.map(({ verdict, finding, rule, met }) => [verdict, finding, rule, met].join(" "))),
  ];
  const findings = [pair, plan].flatMap(({ findings, met }, index) => [
    ...findings.map(({ rule }, place) => `${index + 1} ${place + 1} ${rule} false`),
    ...met.map(({ rule }, place) => `${index + 1} ${findings.length + place + 1} ${rule} true`),
  ]);
  expect(told).toStrictEqual(findings);
  expect(plan.met.length).toBeGreaterThan(0);
});

test("numbers stand as numbers with their unit, words as words", () => {
  const shared = rows.find(({ rule, measure }) => rule === "temperature" && measure === "shared");
  expect(shared).toMatchObject({ min: 24, max: 26, unit: "degC", number: null, word: null });
  const prey = rows.find(({ rule, measure }) => rule === "predation" && measure === "prey");
  expect(prey).toMatchObject({
    number: 3.5,
    unit: "cm",
    fromID: "pterophyllum-scalare",
    toID: "paracheirodon-innesi",
  });
  const calmest = rows.find(({ rule, measure }) => rule === "flow" && measure === "calmest");
  expect(calmest).toMatchObject({ word: "still", number: null, unit: null });
});

test("a condition stands beside its finding", () => {
  const asked = plan.findings.flatMap((finding) => ("condition" in finding ? [finding] : []));
  expect(asked.length).toBeGreaterThan(0);
  for (const { rule, condition } of asked) {
    const row = rows.find(
      (each) => each.verdict === 2 && each.rule === rule && each.conditionOn === condition.on,
    );
    const { wanted } = condition;
    const told = "oneOf" in wanted ? wanted.oneOf.join(" | ") : [wanted.min ?? null, wanted.max ?? null];
    expect("oneOf" in wanted ? row?.conditionWords : [row?.conditionMin, row?.conditionMax]).toStrictEqual(
      told,
    );
  }
});

test("a form is told from its species, and a group from another of its species, by their places", () => {
  const goldfish = named("goldfish");
  const beside = assessPair({ species: goldfish }, { species: applyForm(goldfish, "veiltail") });
  const { findings, met } = beside;
  const all = [...findings, ...met];
  const told = verdictRows([beside]);
  expect(all.some(({ from }) => from === 0) && all.some(({ to }) => to === 1)).toBe(true);
  for (const { finding, fromParty, toParty, conditionParty } of told) {
    const meant = finding === null ? undefined : all[finding - 1];
    const of = meant && "condition" in meant ? meant.condition.of : undefined;
    const places = [meant?.from, meant?.to, of].map((index) => (index === undefined ? null : index + 1));
    expect([fromParty, toParty, conditionParty]).toStrictEqual(places);
  }
});

test("a verdict without findings has a row that tells the outcome", () => {
  const bare = { ...pair, outcome: "suitable", findings: [], met: [] } as const;
  const [row, ...more] = verdictRows([bare]);
  expect(more).toStrictEqual([]);
  expect(row).toMatchObject({ rowID: "1", outcome: "suitable", finding: null, rule: null });
});

test("rows have ids that none shares", () => {
  expect(new Set(rows.map(({ rowID }) => rowID)).size).toBe(rows.length);
});

test("refuses what are no verdicts", () => {
  expect(() => Reflect.apply(verdictRows, undefined, [pair])).toThrow(InvalidInputError);
  expect(() => Reflect.apply(verdictRows, undefined, [["suitable"]])).toThrow(InvalidInputError);
});

test.each([
  ["an empty object", {}, "verdicts[0].outcome"],
  ["no parties", { ...pair, parties: undefined }, "verdicts[0].parties"],
  ["no bounds", { ...pair, bounds: null }, "verdicts[0].bounds"],
  ["a finding that is nothing", { ...pair, findings: [null] }, "verdicts[0].findings[0]"],
  ["a finding without traits", { ...pair, met: [{ rule: "pH" }] }, "verdicts[0].met[0].traits"],
])("%s is no verdict", (_, verdict, at) => {
  expectRefused(() => Reflect.apply(verdictRows, undefined, [[verdict]]), at);
});
