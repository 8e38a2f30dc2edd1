import { expect, test } from "vitest";
import { distinct } from "../src/distinct";

test("of items that say the same the first is kept, in their order", () => {
  const [first, second, again] = [{ min: 20 }, { max: 26 }, { min: 20 }];
  const kept = distinct([first, second, again]);
  expect(kept).toStrictEqual([first, second]);
  expect(kept[0]).toBe(first);
  expect(distinct([0, false, "", "0", 0])).toStrictEqual([0, false, "", "0"]);
});

test("what has to differ may be a part", () => {
  const [mine, theirs] = [
    { span: { min: 1 }, said: "a" },
    { span: { min: 1 }, said: "b" },
  ];
  expect(distinct([mine, theirs], ({ span }) => span)).toStrictEqual([mine]);
  expect(distinct([mine, theirs])).toStrictEqual([mine, theirs]);
});

test("nothing and one stay as they are", () => {
  expect(distinct([])).toStrictEqual([]);
  expect(distinct(["one"])).toStrictEqual(["one"]);
});
