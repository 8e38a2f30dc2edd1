import { expect, test } from "vitest";
import { compare } from "../../../src/standards/comparing/compare";

const at = (value: number) => ({ min: value, max: value });

test("what is reached exactly is met, unless more is asked", () => {
  expect(compare(at(54), at(54))).toBe("met");
  expect(compare(at(54), at(53.9))).toBe("not-met");
  expect(compare({ ...at(150), beyond: true }, at(150))).toBe("not-met");
  expect(compare({ ...at(150), beyond: true }, at(151))).toBe("met");
});

test("between the ends of what is asked or had it depends", () => {
  expect(compare({ min: 12, max: 15 }, at(13))).toBe("depends");
  expect(compare(at(30), { min: 27, max: 31 })).toBe("depends");
  expect(compare({ min: 12, max: 15 }, { min: 15, max: 20 })).toBe("met");
  expect(compare({ min: 12, max: 15 }, { min: 5, max: 11 })).toBe("not-met");
  expect(compare({ min: 12, max: 15, beyond: true }, { min: 5, max: 12 })).toBe("not-met");
});

test("without an upper end nothing is met, and what falls short of the lower still does", () => {
  expect(compare({ min: 12 }, at(1000))).toBe("undetermined");
  expect(compare({ min: 12 }, at(11))).toBe("not-met");
});
