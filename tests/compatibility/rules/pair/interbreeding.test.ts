import { describe, expect, test } from "vitest";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import xiphophorusHellerii from "vivary/catalog/xiphophorus-hellerii";
import xiphophorusMaculatus from "vivary/catalog/xiphophorus-maculatus";
import { interbreeding } from "../../../../src/compatibility/rules/pair/interbreeding";
import type { Sex } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

const one = animal("one", { "reproduction.interbreedsWith": ["two"] });
const two = animal("two", { "reproduction.interbreedsWith": ["one"] });
const weights = (a?: Sex, b?: Sex) =>
  weighed(pairBy(interbreeding, { species: one, sex: a }, { species: two, sex: b })).findings;

test("a male of one and a female of the other have offspring", () => {
  expect(weights("male", "female")).toEqual(["restricting"]);
  expect(weights("female", "male")).toEqual(["restricting"]);
  expect(weights()).toEqual(["restricting", "restricting"]);
});

test("animals of one sex have none", () => {
  expect(weights("male", "male")).toEqual([]);
  expect(weights("female", "female")).toEqual([]);
});

test("species that are not listed do not cross", () => {
  const other = animal("other", { "reproduction.interbreedsWith": [] });
  expect(weighed(pairBy(interbreeding, { species: one }, { species: other })).findings).toEqual([]);
});

test("it is enough that one record lists the other", () => {
  const silent = animal("two", { "reproduction.interbreedsWith": [] });
  for (const [mine, theirs] of [
    ["male", "female"],
    ["female", "male"],
  ] as const) {
    expect(
      weighed(pairBy(interbreeding, { species: one, sex: mine }, { species: silent, sex: theirs })).findings,
      `${mine} of the one that lists`,
    ).toEqual(["restricting"]);
  }
});

describe("in a plan", () => {
  const among = (males: readonly [number, number]) =>
    planBy(interbreeding, [
      { species: one, males: males[0], females: 3 },
      { species: two, males: males[1], females: 3 },
    ]);

  test("it ends where no males of the one meet females of the other", () => {
    expect(weighed(among([0, 0]))).toEqual({ findings: [], met: [] });
    expect(among([1, 0]).findings).toMatchObject([
      { weight: "restricting", from: 0, to: 1, condition: { on: "group.males", of: 0, wanted: { max: 0 } } },
    ]);
    expect(weighed(among([1, 1])).findings).toEqual(["restricting", "restricting"]);
  });

  test("animals of unknown sex leave it open", () => {
    const { bounds, open } = planBy(interbreeding, [
      { species: one, unsexed: 4 },
      { species: two, females: 4 },
    ]);
    expect(bounds).toEqual({ atBest: "suitable", atWorst: "conditional" });
    expect(open).toMatchObject([{ input: "group.males", of: 0, reason: "not-given" }]);
  });
});

test("swordtails and platies cross, guppies and platies do not", () => {
  expect(
    pairBy(interbreeding, { species: xiphophorusHellerii }, { species: xiphophorusMaculatus }).outcome,
  ).toBe("conditional");
  expect(
    pairBy(interbreeding, { species: poeciliaReticulata }, { species: xiphophorusMaculatus }).outcome,
  ).toBe("suitable");
});
