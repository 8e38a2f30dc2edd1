import { describe, expect, test } from "vitest";
import { staysAlone, wantedKin } from "../../../src/compatibility/animals/wanted";
import type { Kin } from "../../../src/plan";

const both = { male: true, female: true };
const kin = (numbers: Omit<Kin, "mayHave">): Kin => ({ ...numbers, mayHave: both });
const shoal = { "social.group": { least: 8 }, "social.living": "shoal" } as const;

describe("as many are wanted", () => {
  test("as belong together, and never fewer than there are", () => {
    expect(wantedKin({ party: { kin: kin({ count: 3 }) }, ...shoal }).count).toBe(8);
    expect(wantedKin({ party: { kin: kin({ count: 12 }) }, ...shoal }).count).toBe(12);
    expect(wantedKin({ party: { kin: kin({}) }, ...shoal }).count).toBe(8);
    const single = { ...shoal, "social.group": { least: 1 } };
    expect(wantedKin({ party: { kin: kin({}) }, ...single }).count).toBe(1);
  });

  test("as are past a number to avoid", () => {
    const group = { least: 2, avoid: { min: 3, max: 5 } };
    expect(wantedKin({ party: { kin: kin({ count: 4 }) }, ...shoal, "social.group": group }).count).toBe(6);
  });

  test("as there are, of those that live alone or of which no number is known", () => {
    const alone = { ...shoal, "social.living": "alone" } as const;
    expect(wantedKin({ party: { kin: kin({ count: 2 }) }, ...alone }).count).toBe(2);
    expect(wantedKin({ party: { kin: kin({ count: 2 }) } }).count).toBe(2);
  });
});

describe("of both sexes", () => {
  const harem = { ...shoal, "social.femalesPerMale": 2 };

  test("there are enough females, and the others that join are female", () => {
    const wanted = (males: number, females: number) =>
      wantedKin({ party: { kin: kin({ count: males + females, males, females }) }, ...harem });
    expect(wanted(2, 2)).toMatchObject({ count: 8, males: 2, females: 6 });
    expect(wanted(4, 4)).toMatchObject({ count: 12, males: 4, females: 8 });
    expect(wanted(4, 9)).toMatchObject({ count: 13, males: 4, females: 9 });
  });

  test("so many females join as are too few where all of unknown sex were female", () => {
    const wanted = (count: number, males: number) =>
      wantedKin({ party: { kin: kin({ count, some: { male: males } }) }, ...harem });
    expect(wanted(9, 5)).toMatchObject({ count: 15, some: { male: 5, female: 6 } });
    expect(wanted(6, 5)).toMatchObject({ count: 15, some: { male: 5, female: 7 } });
    expect(wanted(9, 3)).toEqual(kin({ count: 9, some: { male: 3 } }));
  });

  test("males get females beside them, as many as each needs, and as many as there should be stay of one sex", () => {
    const only = (males: number) => ({
      count: males,
      males,
      females: 0,
      mayHave: { male: true, female: false },
    });
    expect(wantedKin({ party: { kin: only(3) }, ...harem })).toEqual({
      count: 9,
      males: 3,
      females: 6,
      mayHave: both,
    });
    expect(wantedKin({ party: { kin: only(8) }, ...harem })).toEqual(only(8));
  });
});

test("one animal stays alone where its kind lives so, or where no more are wanted; nobody knows of what is not stated", () => {
  const one = { party: { kin: kin({ count: 1 }) } };
  expect(staysAlone({ ...one, "social.living": "alone" })).toBe(true);
  expect(staysAlone({ ...one, "social.living": "group", "social.group": { least: 1 } })).toBe(true);
  expect(staysAlone({ ...one, ...shoal })).toBe(false);
  expect(staysAlone({ ...one, "social.living": "shoal" })).toBe(undefined);
  expect(staysAlone(one)).toBe(undefined);
  expect(staysAlone({ party: { kin: kin({ count: 2 }) } })).toBe(false);
});
