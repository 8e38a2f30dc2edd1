import { expect, test } from "vitest";
import { assessPlan } from "../../../../src/compatibility";
import { bothSexes } from "../../../../src/compatibility/rules/plan/both-sexes";
import type { Group } from "../../../../src/plan";
import { describe as describeVerdict } from "../../../../src/report";
import { german } from "../../../../src/report/de";
import { animal } from "../../animals";
import { planBy } from "../../judging";

const fish = animal("fish", { "reproduction.mode": "scatters-eggs" });
const among = (...groups: readonly Omit<Group, "species">[]) =>
  planBy(
    bothSexes,
    groups.map((group) => ({ species: fish, ...group })),
  ).findings.map(({ weight, from, measures }) => [weight, from, measures]);

test("males alone of which young are wanted lack a female, females a male", () => {
  expect(among({ males: 5, raises: true })).toEqual([["advisory", 0, { lacking: { value: "female" } }]]);
  expect(among({ females: 2, raises: true })).toEqual([["advisory", 0, { lacking: { value: "male" } }]]);
});

test("nothing is told where no young are wanted, or where either sex is there or may be", () => {
  expect(among({ males: 5 })).toEqual([]);
  expect(among({ males: 1, females: 1, raises: true })).toEqual([]);
  expect(among({ males: 1, unsexed: 1, raises: true })).toEqual([]);
  expect(among({ unsexed: 6, raises: true })).toEqual([]);
  expect(among({ juveniles: 6, raises: true })).toEqual([]);
});

test("a mate in another group of the species will do", () => {
  expect(among({ males: 1, raises: true }, { females: 1 })).toEqual([]);
});

test("of crayfish females alone may do", () => {
  const crayfish = (sexes: Omit<Group, "species">) =>
    planBy(bothSexes, [{ species: animal("crayfish", {}, { kind: "crayfish" }), ...sexes, raises: true }])
      .findings.length;
  expect(crayfish({ females: 2 })).toBe(0);
  expect(crayfish({ males: 2 })).toBe(1);
});

test("one animal by itself lacks a mate, whatever it is", () => {
  expect(among({ unsexed: 1, raises: true })).toEqual([["advisory", 0, {}]]);
  expect(among({ juveniles: 1, raises: true })).toHaveLength(1);
});

test("females of livebearers bear by themselves, and snails are let be", () => {
  const livebearer = animal("livebearer", { "reproduction.mode": "livebearer" });
  const snail = animal("snail", {}, { kind: "snail" });
  for (const [species, sexes, told] of [
    [livebearer, { females: 1 }, 0],
    [livebearer, { males: 2 }, 1],
    [snail, { females: 3 }, 0],
    [snail, { unsexed: 1 }, 0],
  ] as const)
    expect(planBy(bothSexes, [{ species, ...sexes, raises: true }]).findings).toHaveLength(told);
});

test("a keeper reads of it, and the outcome stays", () => {
  const plan = { tank: { base: { shape: "rectangle", length: 80, width: 40 } } } as const;
  const guppies = (raises: boolean) => assessPlan({ ...plan, groups: [{ species: fish, males: 5, raises }] });
  expect(guppies(true).outcome).toBe(guppies(false).outcome);
  expect(describeVerdict(guppies(true))).toContain("are wanted, but no female is planned.");
  expect(describeVerdict(guppies(true), { messages: german })).toContain("aber kein Weibchen geplant.");
});
