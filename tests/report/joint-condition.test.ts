import { expect, test } from "vitest";
import { jointCondition } from "../../src/report/joint-condition";

test("the greater of two shares of cover meets both", () => {
  const [some, more] = [0.2, 0.3].map((min) => ({ on: "tank.cover", within: { min } }) as const);
  expect(some && more && jointCondition(some, more)).toEqual({ on: "tank.cover", within: { min: 0.3 } });
});

test("spans that share nothing, other facts and other animals are conditions apart", () => {
  const cool = { on: "water.temperature", within: { min: 18, max: 20 } } as const;
  expect(jointCondition(cool, { on: "water.temperature", within: { min: 24, max: 26 } })).toBeUndefined();
  expect(jointCondition(cool, { on: "water.pH", within: { min: 18, max: 20 } })).toBeUndefined();
  const one = { on: "group.males", of: 0, within: { max: 1 } } as const;
  expect(jointCondition(one, { ...one, of: 1 })).toBeUndefined();
  expect(jointCondition(one, { ...one, within: { max: 0 } })).toEqual({ ...one, within: { max: 0 } });
});

test("a current that suits both meets both", () => {
  const gentle = { on: "tank.flow.calmest", is: ["still", "gentle"] } as const;
  const moderate = { on: "tank.flow.calmest", is: ["still", "gentle", "moderate"] } as const;
  expect(jointCondition(gentle, moderate)).toEqual(gentle);
  expect(jointCondition({ ...gentle, is: ["still"] }, { ...gentle, is: ["strong"] })).toBeUndefined();
});

test("a lid is a lid", () => {
  const lid = { on: "tank.lid", is: true } as const;
  expect(jointCondition(lid, lid)).toEqual(lid);
  expect(
    jointCondition({ on: "group.longFins", of: 0, is: false }, { on: "group.longFins", of: 0, is: true }),
  ).toBeUndefined();
});
