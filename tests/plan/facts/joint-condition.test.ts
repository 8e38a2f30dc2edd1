import { expect, test } from "vitest";
import { jointCondition } from "../../../src/plan/facts/condition";

test("the greater of two shares of cover meets both", () => {
  const some = { on: "tank.cover", wanted: { min: 0.2, unit: "1" } } as const;
  const more = { on: "tank.cover", wanted: { min: 0.3, unit: "1" } } as const;
  expect(jointCondition(some, more)).toEqual(more);
  expect(jointCondition(more, some)).toEqual(more);
});

test("spans that share nothing, other facts and other animals are conditions apart", () => {
  const cool = { on: "water.temperature", wanted: { min: 18, max: 20 } } as const;
  expect(jointCondition(cool, { on: "water.temperature", wanted: { min: 24, max: 26 } })).toBeUndefined();
  expect(jointCondition(cool, { on: "water.pH", wanted: { min: 18, max: 20 } })).toBeUndefined();
  const one = { on: "group.males", of: 0, wanted: { max: 1 } } as const;
  expect(jointCondition(one, { ...one, of: 1 })).toBeUndefined();
  expect(jointCondition(one, { ...one, wanted: { max: 0 } })).toEqual({ ...one, wanted: { max: 0 } });
});

test("spans that touch meet where they touch", () => {
  const cool = { on: "water.temperature", wanted: { min: 18, max: 22 } } as const;
  expect(jointCondition(cool, { on: "water.temperature", wanted: { min: 22 } })?.wanted).toEqual({
    min: 22,
    max: 22,
  });
});

test("a current that suits both meets both", () => {
  const gentle = { on: "tank.flow.calmest", wanted: { oneOf: ["still", "gentle"] } } as const;
  const moderate = { on: "tank.flow.calmest", wanted: { oneOf: ["still", "gentle", "moderate"] } } as const;
  expect(jointCondition(gentle, moderate)).toEqual(gentle);
  const [still, strong] = ["still", "strong"].map((word) => ({ ...gentle, wanted: { oneOf: [word] } }));
  expect(still && strong && jointCondition(still, strong)).toBeUndefined();
});

test("a lid is a lid, and a word is no number", () => {
  const lid = { on: "tank.lid", wanted: { oneOf: [true] } } as const;
  expect(jointCondition(lid, lid)).toEqual(lid);
  expect(jointCondition(lid, { on: "tank.lid", wanted: { min: 1 } })).toBeUndefined();
  const short = { on: "group.longFins", of: 0, wanted: { oneOf: [false] } } as const;
  expect(jointCondition(short, { ...short, wanted: { oneOf: [true] } })).toBeUndefined();
});
