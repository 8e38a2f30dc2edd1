import { describe, expect, test, vi } from "vitest";
import { frozen } from "../src/frozen";
import { frozenWhenRead, once, onceOfEach, onceOfEachObject, remembered } from "../src/made-once";

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

describe("what is made of something", () => {
  const copied = remembered((given: { readonly held: { count: number } }) => ({ ...given.held }));

  test("is made once where nobody can change that", () => {
    const given = frozen({ held: { count: 1 } });
    expect(copied(given)).toBe(copied(given));
  });

  test("is made anew where a part of it can be changed", () => {
    const given = Object.freeze({ held: { count: 1 } });
    const before = copied(given);
    given.held.count = 2;
    expect([before, copied(given)]).toEqual([{ count: 1 }, { count: 2 }]);
  });
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
