import { expect, test } from "vitest";
import pterophyllumScalare from "vivary/catalog/pterophyllum-scalare";
import { height } from "../../../../src/compatibility/rules/plan/height";
import { adults, animal } from "../../animals";
import { planBy, weighed } from "../../judging";

const deep = (length: number) =>
  animal("tall", { "size.adultLength": adults(length), "size.bodyShape": "short-deep", "space.height": 50 });
const tall = deep(15);
const inTank = (high: number, unit?: "cm" | "in") =>
  weighed(planBy(height, [{ species: tall, unsexed: 1 }], { tank: { height: high, ...(unit && { unit }) } }));

test("a deep body needs a high tank", () => {
  expect(inTank(49.9)).toEqual({ findings: ["restricting"], met: [] });
  expect(inTank(50)).toEqual({ findings: [], met: ["restricting"] });
});

test("the height may be given in inches", () => {
  const base = { shape: "rectangle", length: 48, width: 20 } as const;
  const at = (inches: number) =>
    weighed(planBy(height, [{ species: tall, unsexed: 1 }], { tank: { base, height: inches, unit: "in" } }));
  expect(at(19).findings).toEqual(["restricting"]);
  expect(at(20).met).toEqual(["restricting"]);
});

test("a deep body of less than 10 cm fits any tank", () => {
  const small = [{ species: deep(9.9), unsexed: 1 }];
  expect(weighed(planBy(height, small, { tank: { height: 25 } }))).toEqual({ findings: [], met: [] });
});

test("a spindle fits any tank it can turn in, whether or not a height is known", () => {
  const spindle = animal("spindle", { "size.adultLength": adults(15), "size.bodyShape": "fusiform" });
  const { open, bounds } = planBy(height, [{ species: spindle, unsexed: 1 }], { tank: { height: 15 } });
  expect(open).toEqual([]);
  expect(bounds.atWorst).toBe("suitable");
});

test("in a keeper's tank: an angelfish in a tank 30 cm high", () => {
  const groups = [{ species: pterophyllumScalare, unsexed: 1 }];
  expect(planBy(height, groups, { tank: { height: 30 } }).outcome).toBe("conditional");
});
