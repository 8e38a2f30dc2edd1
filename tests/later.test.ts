import { expect, test, vi } from "vitest";
import { frozenWhenRead, once, onceOfEach, onceOfEachObject } from "../src/later";

test("what is made once is made at the first call, be it undefined", () => {
  const make = vi.fn(() => undefined);
  const get = once(make);
  expect(make).not.toHaveBeenCalled();
  expect([get(), get()]).toStrictEqual([undefined, undefined]);
  expect(make).toHaveBeenCalledTimes(1);
});

test("what is made once of each is made of no other, and at the first call", () => {
  const make = vi.fn((key: string) => ({ key }));
  const of = onceOfEach(make);
  expect(make).not.toHaveBeenCalled();
  expect([of("one"), of("other")]).toStrictEqual([{ key: "one" }, { key: "other" }]);
  expect(of("one")).toBe(of("one"));
  expect(make).toHaveBeenCalledTimes(2);
});

test("so is what is made once of each object", () => {
  const make = vi.fn((key: object) => ({ key }));
  const of = onceOfEachObject(make);
  const [one, other] = [{}, {}];
  expect([of(one).key, of(other).key, of(one).key]).toStrictEqual([one, other, one]);
  expect(of(one)).toBe(of(one));
  expect(make).toHaveBeenCalledTimes(2);
});

test("a field is made when it is read, and no other", () => {
  const [first, second] = [vi.fn(() => ({ of: 1 })), vi.fn(() => 2)];
  const held: Readonly<Record<string, unknown>> = frozenWhenRead({}, [
    ["first", first],
    ["second", second],
  ]);
  expect(held.first).toBe(held.first);
  expect(first).toHaveBeenCalledTimes(1);
  expect(second).not.toHaveBeenCalled();
  expect(Object.isFrozen(held)).toBe(true);
  expect(JSON.stringify(held)).toBe('{"first":{"of":1},"second":2}');
});
