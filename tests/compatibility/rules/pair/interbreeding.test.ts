import { describe, expect, test } from "vitest";
import poeciliaReticulata from "vivary/catalog/poecilia-reticulata";
import xiphophorusHellerii from "vivary/catalog/xiphophorus-hellerii";
import xiphophorusMaculatus from "vivary/catalog/xiphophorus-maculatus";
import { interbreeding } from "../../../../src/compatibility/rules/pair/interbreeding";
import type { Group } from "../../../../src/plan";
import type { Sex } from "../../../../src/species";
import { animal } from "../../animals";
import { pairBy, planBy, weighed } from "../../judging";

const one = animal("one", { "reproduction.interbreedsWith": ["two"] });
const two = animal("two", { "reproduction.interbreedsWith": ["one"] });
const weights = (a?: Sex, b?: Sex) =>
  weighed(pairBy(interbreeding, { species: one, sex: a }, { species: two, sex: b })).findings;

test("a male of one and a female of the other have offspring, which harms nobody", () => {
  expect(weights("male", "female")).toEqual(["advisory"]);
  expect(weights("female", "male")).toEqual(["advisory"]);
  expect(weights()).toEqual(["advisory", "advisory"]);
  expect(pairBy(interbreeding, { species: one }, { species: two }).outcome).toBe("suitable");
});

test("animals of one sex have none", () => {
  expect(weights("male", "male")).toEqual([]);
  expect(weights("female", "female")).toEqual([]);
});

test("species that are not listed do not cross, nor do families", () => {
  const other = animal("other", { "reproduction.interbreedsWith": [] });
  expect(weighed(pairBy(interbreeding, { species: one }, { species: other })).findings).toEqual([]);
  const stranger = { ...two, taxonomy: { ...two.taxonomy, family: "Aliudae" } };
  expect(weighed(pairBy(interbreeding, { species: one }, { species: stranger })).findings).toEqual([]);
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
    ).toEqual(["advisory"]);
  }
});

describe("where young are wanted", () => {
  type Kept = Omit<Group, "species">;
  const among = (mine: Kept, theirs: Kept) =>
    planBy(interbreeding, [
      { species: one, ...mine },
      { species: two, ...theirs },
    ]);
  const asked = (...groups: Parameters<typeof among>) =>
    among(...groups).findings.map((finding) => ("condition" in finding ? finding.condition : finding.weight));

  test("of either, it blocks what the plan says of their sexes", () => {
    expect(asked({ males: 1, females: 3, raises: true }, { females: 3 })).toEqual(["blocking"]);
    expect(asked({ males: 1, females: 3 }, { females: 3, raises: true })).toEqual(["blocking"]);
    expect(asked({ males: 1, females: 3, raises: true }, { males: 1, females: 3 })).toEqual([
      "blocking",
      "blocking",
    ]);
    expect(asked({ males: 1, females: 3 }, { males: 1, females: 3 })).toEqual(["advisory", "advisory"]);
  });

  test("it asks those of unsaid sex that raise none to be of one that does not cross", () => {
    expect(asked({ unsexed: 4 }, { females: 3, raises: true })).toMatchObject([
      { on: "group.sex", of: 0, wanted: { oneOf: ["female"] } },
    ]);
    expect(asked({ unsexed: 4, raises: true }, { females: 3 })).toEqual(["blocking"]);
    expect(asked({ males: 2, raises: true }, { unsexed: 4 })).toMatchObject([
      { on: "group.sex", of: 1, wanted: { oneOf: ["male"] } },
    ]);
  });

  test("females of both have none together", () => {
    expect(asked({ females: 3, raises: true }, { females: 3, raises: true })).toEqual([]);
  });
});

test("swordtails and platies cross, guppies and platies do not", () => {
  const crosses = (species: typeof poeciliaReticulata) =>
    pairBy(interbreeding, { species }, { species: xiphophorusMaculatus }).findings.map(
      ({ weight }) => weight,
    );
  expect(crosses(xiphophorusHellerii)).toEqual(["advisory", "advisory"]);
  expect(crosses(poeciliaReticulata)).toEqual([]);
});
