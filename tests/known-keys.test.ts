import { describe, expect, test } from "vitest";
import {
  entryOrder,
  feedingPlan,
  leastTank,
  remedies,
  setPoint,
  suspects,
  turningPoints,
  whoCouldJoin,
} from "../src/advice";
import { speciesById } from "../src/catalog";
import { assessPair, assessPlan, outcomes, pairPlan, planner, witness } from "../src/compatibility";
import { InvalidInputError } from "../src/errors";
import { recordById } from "../src/evidence";
import { knownKeys } from "../src/known-keys";
import { suggestSpecies } from "../src/search";
import { resolve } from "../src/species";
import { overlapRows } from "../src/tables";

test("options are given back as they came", () => {
  const options: { readonly most: number; readonly want?: string } = { most: 3 };
  expect(knownKeys(options, ["most", "want"])).toBe(options);
  expect(knownKeys({}, [])).toStrictEqual({});
});

test("a key that is not known is refused with what it may have been meant to be", () => {
  const call = () =>
    Reflect.apply(knownKeys, undefined, [{ comercial: true }, ["bases", "commercial"], "only"]);
  expect(call).toThrow('only.comercial: expected one of bases, commercial (commercial?), found "comercial"');
});

test.each([undefined, null, 7, "most", []])("%o are no options", (given) => {
  expect(() => Reflect.apply(knownKeys, undefined, [given, ["most"]])).toThrow(InvalidInputError);
});

const record = recordById("danio-rerio");
const species = speciesById("danio-rerio");
const plan = {
  tank: { base: { shape: "rectangle", length: 100, width: 40 } },
  groups: [{ species, unsexed: 8 }],
};
const axes = { axes: ["water.pH"], measures: ["jaccard"] };

describe.each([
  ["resolve", resolve, [record], {}, "comercial"],
  ["resolve, beside only", resolve, [record], { only: {} }, "commercial"],
  ["overlapRows", overlapRows, [[species]], axes, "recordsOf"],
  ["suggestSpecies", suggestSpecies, ["neon"], {}, "language"],
  ["assessPair", assessPair, [{ species }, { species }], {}, "threshold"],
  ["assessPlan", assessPlan, [plan], {}, "rule"],
  ["outcomes", outcomes, [[species]], {}, "rule"],
  ["planner", planner, [plan], {}, "rule"],
  ["witness", witness, [plan], {}, "rule"],
  ["pairPlan", pairPlan, [{ species }, { species }], {}, "rule"],
  ["setPoint", setPoint, [[species]], {}, "swings"],
  ["remedies", remedies, [plan], {}, "atworst"],
  ["entryOrder", entryOrder, [plan], {}, "quarantines"],
  ["feedingPlan", feedingPlan, [plan], {}, "rule"],
  ["leastTank", leastTank, [plan.groups], {}, "shape"],
  ["suspects", suspects, [plan, []], {}, "rule"],
  ["turningPoints", turningPoints, [plan], { of: "water.temperature" }, "rule"],
  ["whoCouldJoin", whoCouldJoin, [plan, [species]], {}, "mosts"],
] as const)("%s", (_, asked, given, options, misspelt) => {
  test(`refuses ${misspelt} among its options`, () => {
    const call = () => Reflect.apply(asked, undefined, [...given, { ...options, [misspelt]: 1 }]);
    expect(call).toThrow(InvalidInputError);
    expect(call).toThrow(`options.${misspelt}`);
  });
});
