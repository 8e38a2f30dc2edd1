import { describe, expect, test } from "vitest";
import { rivalsOf } from "../../../src/compatibility/animals/rivals";
import type { Territory } from "../../../src/compatibility/animals/territories";
import { kinOf } from "../../../src/plan/kin";

type Given = Parameters<typeof rivalsOf>[0];

const males = { does: "bites", doer: "male", target: "own-sex" } as const;
const each = { does: "bites", target: "own-kind" } as const;
const count = (animals: Parameters<typeof kinOf>[0][number], given: Partial<Given> = {}) =>
  rivalsOf({
    act: males,
    kin: kinOf([animals]),
    isPair: false,
    living: "harem",
    territory: "none",
    ...given,
  });

describe("rivals of one sex", () => {
  test("are those of the sex that fights", () => {
    expect(count({ count: 5, males: 2, females: 3 })).toBe(2);
    expect(count({ count: 5, males: 0, females: 5, sex: "female" })).toBe(0);
    expect(count({ count: 5, males: 2, females: 3 }, { act: { ...males, doer: "female" } })).toBe(3);
  });

  test("are half of those whose sex nobody knows, and both of two", () => {
    expect(count({ count: 5 })).toBe(3);
    expect(count({ count: 2 })).toBe(2);
    expect(count({ count: 1 })).toBe(1);
    expect(count({}, { isPair: true })).toBe(2);
  });

  test("are as many in two groups as in one", () => {
    expect(count({ count: 10 }, { isPair: true })).toBe(5);
    expect(count({ count: 6 }, { isPair: true, act: each })).toBe(3);
  });

  test("are the males where males fight, of those that live in pairs too, however many females there are", () => {
    const gouramis = (males: number, females: number) =>
      count({ count: males + females, males, females }, { living: "pair" });
    expect(gouramis(2, 2)).toBe(2);
    expect(gouramis(2, 4)).toBe(2);
    expect(count({ count: 6, some: { male: 1, female: 4 } }, { living: "pair" })).toBe(2);
    expect(count({ count: 6 }, { living: "pair" })).toBe(3);
  });

  test("are those of the sex of which there are more where either fights", () => {
    const either = { act: { does: "bites", target: "own-sex" } } as const;
    expect(count({ count: 6, males: 1, females: 5 }, either)).toBe(5);
    expect(count({ count: 6, males: 2, females: 4 }, { ...either, living: "pair" })).toBe(4);
  });

  test("are no fewer than are stated where nobody says how many others there are", () => {
    const beside = (count: number) =>
      rivalsOf({
        act: males,
        kin: kinOf([{ sex: "male", count, males: count, females: 0 }, {}]),
        isPair: true,
        living: "harem",
        territory: "none",
      });
    expect(beside(3)).toBe(4);
    expect(beside(5)).toBe(6);
  });

  test("are those of which it is stated, and half of the others", () => {
    const five = { count: 6, some: { male: 5 } };
    expect(count(five)).toBe(6);
    expect(count(five, { act: each })).toBe(6);
    expect(count(five, { act: each, living: "pair" })).toBe(6);
    expect(count({ count: 5, some: { male: 3, female: 1 } }, { act: each, living: "pair" })).toBe(4);
    expect(count({ count: 6, some: { female: 5 } })).toBe(1);
    expect(count({ count: 7, some: { male: 1, female: 2 } })).toBe(3);
  });
});

describe("rivals of a kind", () => {
  test("are all of them, in pairs and harems half, and both of two whose sex nobody knows", () => {
    expect(count({ count: 6 }, { act: each, living: "shoal" })).toBe(6);
    expect(count({ count: 6 }, { act: each })).toBe(3);
    expect(count({ count: 2 }, { act: each })).toBe(2);
    expect(count({ count: 6 }, { act: each, living: "pair" })).toBe(3);
    expect(count({ count: 2 }, { act: each, living: "pair" })).toBe(2);
    expect(count({ count: 2, males: 1, females: 1 }, { act: each, living: "pair" })).toBe(1);
  });

  test("are all of those that live in pairs and are of one sex", () => {
    expect(count({ count: 3, males: 3, females: 0, sex: "male" }, { act: each, living: "pair" })).toBe(3);
  });

  test("are no fewer than hold a place", () => {
    const territory: Territory = { area: 100, zone: "bottom", holder: "each" };
    expect(count({ count: 5, males: 1, females: 4 }, { territory })).toBe(5);
  });
});
