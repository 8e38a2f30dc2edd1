import { describe, expect, test } from "vitest";
import { InvalidInputError } from "../../../src/errors";
import { lengthsOf } from "../../../src/standards/fishes/lengths";
import { adults, adultsBySex } from "../../compatibility/animals";
import { ofStandardLength } from "../surveys";

describe("at present", () => {
  test("a fish is as long as its group states", () => {
    expect(lengthsOf({ young: false, stated: 10, adult: adults(4) })).toMatchObject({
      "present total length": { min: 10, max: 10 },
      "present standard length": { min: 8, max: 8.5 }, // 0.80 to 0.85 of total length
    });
  });

  test("a grown fish is as long as usual", () => {
    expect(lengthsOf({ young: false, adult: adults(4, 7) })["present total length"]).toEqual({
      min: 4,
      max: 4,
    });
  });

  test("a fish of either sex lies between the sexes, one of a sex does not", () => {
    const adult = adultsBySex(3, 5);
    expect(lengthsOf({ young: false, adult })["present total length"]).toEqual({ min: 3, max: 5 });
    expect(lengthsOf({ young: false, sex: "female", adult })["present total length"]).toEqual({
      min: 5,
      max: 5,
    });
  });

  test("a young fish may be of any length up to a grown one's", () => {
    const { "present total length": total, "present standard length": standard } = lengthsOf({
      young: true,
      adult: adults(10),
    });
    expect(total).toEqual({ min: 0, max: 10 });
    expect(standard).toEqual({ min: 0, max: 8.5 });
  });

  test("a standard length counts as it is, and so does a disc", () => {
    const [sl] = ofStandardLength(3);
    expect(lengthsOf({ young: false, adult: ofStandardLength(3) })).toMatchObject({
      "present standard length": { min: 3, max: 3 },
      "present total length": { min: 3 / 0.85, max: 3 / 0.8 },
    });
    const disc = { ...sl, length: 40, measure: "disc", as: "usual", total: { min: 40, max: 40 } } as const;
    expect(lengthsOf({ young: false, adult: [disc] })["present standard length"]).toEqual({
      min: 40,
      max: 40,
    });
  });
});

describe("a fish whose own share of standard length is known", () => {
  /** A knifefish, nearly all of it body. */
  const share = 0.982;

  test("is as long without its tail fin as that share says, stated or usual, young or grown", () => {
    for (const { min, max } of [
      lengthsOf({ young: false, stated: 30, share })["present standard length"],
      lengthsOf({ young: false, adult: adults(30), share })["present standard length"],
    ].map((span) => span ?? { min: Number.NaN, max: Number.NaN })) {
      expect(min).toBeCloseTo(29.46, 10);
      expect(max).toBeCloseTo(29.46, 10);
    }
    const young = lengthsOf({ young: true, adult: adults(30), share })["present standard length"];
    expect(young?.min).toBe(0);
    expect(young?.max).toBeCloseTo(29.46, 10);
  });

  test("with a long tail may be shorter than most, and is not surely so: the next one's tail may be shorter", () => {
    expect(lengthsOf({ young: false, stated: 10, share: 0.65 })["present standard length"]).toEqual({
      min: 6.5,
      max: 8.5, // 0.85 of total length
    });
  });

  test("is measured with its tail fin as without that share", () => {
    const { "present total length": total, "adult total length": adult } = lengthsOf({
      young: false,
      adult: adults(30, 40),
      share,
    });
    expect([total, adult]).toEqual([
      { min: 30, max: 30 },
      { min: 30, max: 40 },
    ]);
  });
});

describe("grown", () => {
  test("a fish lies between usual and greatest, whatever it is now", () => {
    for (const stated of [undefined, 5]) {
      expect(lengthsOf({ young: true, stated, adult: adults(25, 45) })["adult total length"]).toEqual({
        min: 25,
        max: 45,
      });
    }
  });

  test("a fish is no shorter than it is now", () => {
    expect(lengthsOf({ young: false, stated: 50, adult: adults(25, 45) })["adult total length"]).toEqual({
      min: 50,
      max: 50,
    });
  });
});

test("what is unknown is absent", () => {
  expect(lengthsOf({ young: false })).toEqual({});
  expect(Object.keys(lengthsOf({ young: false, stated: 3 }))).not.toContain("adult total length");
});

test("no lengths, and lengths that are none, are refused", () => {
  expect(() => lengthsOf({ young: false, adult: [] })).toThrow(InvalidInputError);
  expect(() => lengthsOf({ young: false, adult: adults(Number.NaN) })).toThrow(InvalidInputError);
  expect(() => lengthsOf({ young: false, adult: adults(-3) })).toThrow(InvalidInputError);
});
