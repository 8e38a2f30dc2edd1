import { expect, test } from "vitest";
import {
  grownLength,
  grownPreyLength,
  isShorterThanGrown,
  preyLength,
} from "../../../src/compatibility/animals/lengths";
import { adults, adultsBySex } from "../animals";

test("a hunter, a fighter or a holder of room counts as grown, or longer where it is", () => {
  expect(grownLength({}, adults(10, 20))).toBe(10);
  expect(grownLength({ length: 3, stage: "juvenile" }, adults(10, 20))).toBe(10);
  expect(grownLength({ length: 12 }, adults(10, 20))).toBe(12);
  expect(grownLength({}, adultsBySex(4, 6))).toBe(6);
  expect(grownLength({ sex: "male" }, adultsBySex(4, 6))).toBe(4);
});

test("prey counts at the length it has, else as grown ones of the smaller sex", () => {
  expect(preyLength({}, adultsBySex(4, 6))).toBe(4);
  expect(preyLength({ sex: "female" }, adultsBySex(4, 6))).toBe(6);
  expect(preyLength({ length: 2 }, adultsBySex(4, 6))).toBe(2);
  expect(grownPreyLength({ length: 2 }, adultsBySex(4, 6))).toBe(4);
});

test("nobody knows the length of young of which none is stated", () => {
  expect(preyLength({ stage: "juvenile" }, adults(4))).toBeUndefined();
  expect(preyLength({ stage: "juvenile", length: 1 }, adults(4))).toBe(1);
});

test("a fish is grown from nine tenths of the usual length of the smallest of its sex on", () => {
  const isShort = (length: number, sex?: "female") =>
    isShorterThanGrown({ length, ...(sex && { sex }) }, adultsBySex(4, 6));
  expect([isShort(3.5), isShort(3.6), isShort(5, "female"), isShort(5.4, "female")]).toEqual([
    true,
    false,
    true,
    false,
  ]);
  expect(isShorterThanGrown({}, adults(4))).toBe(false);
});
