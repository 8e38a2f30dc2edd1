import { describe, expect, test } from "vitest";
import { mixWater } from "../../../src/advice";
import { expectRefused } from "../../refused";

const tap = { generalHardness: 16, carbonateHardness: 12, nitrate: 20 };
const demineralised = { generalHardness: 0, carbonateHardness: 0, nitrate: 0 };
const softened = { generalHardness: 1, carbonateHardness: 12 };

describe("a mixture", () => {
  test("has as much of the first water as goes", () => {
    expect(
      mixWater({
        sources: [tap, demineralised],
        wanted: { generalHardness: { min: 4, max: 8 }, carbonateHardness: { max: 6 } },
      }),
    ).toEqual({
      shares: [0.5, 0.5],
      result: { generalHardness: 8, carbonateHardness: 6, nitrate: 10 },
      outOfReach: [],
    });
  });

  test("is tap water alone where that is as wanted", () => {
    const { shares } = mixWater({ sources: [tap, demineralised], wanted: { generalHardness: { min: 10 } } });
    expect(shares).toEqual([1, 0]);
  });

  test("of three waters meets both hardnesses where two cannot", () => {
    const wanted = { generalHardness: { min: 4, max: 4 }, carbonateHardness: { min: 6, max: 6 } };
    const { shares, result, outOfReach } = mixWater({ sources: [tap, demineralised, softened], wanted });
    expect(outOfReach).toEqual([]);
    expect(result).toEqual({ generalHardness: 4, carbonateHardness: 6 });
    // 16 a + c = 4 and 12 (a + c) = 6: a = 3.5 / 15.
    expect(shares.map((share) => Number(share.toFixed(6)))).toEqual([0.233333, 0.5, 0.266667]);
    expect(mixWater({ sources: [tap, demineralised], wanted }).outOfReach).toHaveLength(1);
  });

  test("that is out of reach comes as near as it can, and says by how much", () => {
    expect(mixWater({ sources: [tap, softened], wanted: { carbonateHardness: { max: 4 } } })).toEqual({
      shares: [1, 0],
      result: tap,
      outOfReach: [{ on: "carbonateHardness", by: -8, reachable: { min: 12, max: 12 } }],
    });
    expect(
      mixWater({ sources: [demineralised], wanted: { generalHardness: { min: 3 } } }).outOfReach,
    ).toEqual([{ on: "generalHardness", by: 3, reachable: { min: 0, max: 0 } }]);
  });

  test("tells the weekly change that keeps nitrate under its limit", () => {
    const mixed = mixWater({
      sources: [tap, demineralised],
      wanted: { generalHardness: { min: 8, max: 8 } },
      tank: { nitrogen: 20, volume: 100 },
    });
    // 7 × 20 mg of nitrogen are 620 mg of nitrate, 6.2 mg/L, of the 10 between 10 and 20.
    expect(mixed.weeklyChange?.share).toBeCloseTo(0.61976, 4);
    expect(mixed.weeklyChange?.litres).toBeCloseTo(61.976, 2);
  });

  test("has so much less of the tap water that half is changed in a week, within the hardness wanted", () => {
    const mixed = mixWater({
      sources: [tap, demineralised],
      wanted: { generalHardness: { min: 4, max: 8 } },
      tank: { nitrogen: 20, volume: 100 },
    });
    // A week adds 6.1976 mg/L, half of 12.395, which leaves 7.605 of 20 mg/L to the new water: of 20, 38 %.
    expect(mixed.shares[0]).toBeCloseTo(0.38024, 4);
    expect(mixed.weeklyChange?.share).toBeCloseTo(0.5, 9);
  });

  test("has least nitrate where half a week's water is not enough", () => {
    const hard = { generalHardness: 18, carbonateHardness: 14, nitrate: 40 };
    const mixed = mixWater({
      sources: [hard, demineralised],
      wanted: { generalHardness: { min: 4, max: 8 } },
      tank: { nitrogen: 30, volume: 150 },
    });
    // 4 of 18 °dH, and of 40 mg/L 8.889: 6.1976 of the 11.111 left.
    expect(mixed.outOfReach).toEqual([]);
    expect(mixed.result.generalHardness).toBeCloseTo(4, 9);
    expect(mixed.weeklyChange?.share).toBeCloseTo(0.55779, 4);
  });

  test("is never further from the hardness wanted for the nitrate", () => {
    const { shares, outOfReach } = mixWater({
      sources: [{ ...tap, nitrate: 60 }, demineralised],
      wanted: { generalHardness: { min: 8, max: 8 } },
      tank: { nitrogen: 20, volume: 100 },
    });
    expect(shares).toEqual([0.5, 0.5]);
    expect(outOfReach).toMatchObject([{ on: "nitrate" }]);
  });

  test("says where no weekly change does, and nothing where nobody knows the nitrate", () => {
    const wanted = { generalHardness: { min: 8, max: 8 } };
    const tank = { nitrogen: 400, volume: 100 };
    expect(mixWater({ sources: [tap, demineralised], wanted, tank })).toMatchObject({
      outOfReach: [{ on: "nitrate", by: expect.closeTo(20 - 10 - 123.95, 1) }],
    });
    const unknown = mixWater({ sources: [softened, tap], wanted: { carbonateHardness: { min: 1 } }, tank });
    expect(unknown).not.toHaveProperty("weeklyChange");
    expect(unknown.outOfReach).toEqual([]);
  });
});

test("what is no tank is refused by its path in what was given", () => {
  const given = { sources: [tap, demineralised], wanted: { generalHardness: { max: 8 } } };
  const withTank = (tank: object) => () =>
    mixWater({ ...given, tank: { nitrogen: 20, volume: 100, ...tank } });
  expectRefused(withTank({ nitrogen: -1 }), /^tank\.nitrogen$/);
  expectRefused(withTank({ volume: 0 }), /^tank\.volume$/);
  expectRefused(withTank({ limit: Number.NaN }), /^tank\.limit$/);
  for (const tank of [100, 0, Number.NaN, "", null, false])
    expectRefused(() => mixWater({ ...given, tank: tank as never }), /^tank$/);
});

test("a key that nothing reads is refused", () => {
  const wanted = { generalHardness: { max: 8 } };
  const given = { sources: [tap, demineralised], wanted };
  expectRefused(() => mixWater({ ...given, tanks: {} } as never), /^tanks$/);
  const misspelt = { ...wanted, carbonatHardness: { max: 6 } };
  expectRefused(() => mixWater({ ...given, wanted: misspelt }), /^wanted\.carbonatHardness$/);
  const tank = { nitrogen: 20, volume: 100, most: 30 };
  expectRefused(() => mixWater({ ...given, tank }), /^tank\.most$/);
});

test("a water that is not known, a span the wrong way round, or nothing wanted is refused", () => {
  const wanted = { generalHardness: { min: 4, max: 8 } };
  expectRefused(() => mixWater({ sources: [], wanted }), "sources");
  expectRefused(
    () => mixWater({ sources: [{ carbonateHardness: 3 }], wanted }),
    "sources[0].generalHardness",
  );
  expectRefused(
    () => mixWater({ sources: [tap, { ...tap, nitrate: -2 }], wanted }),
    /^sources\[1\]\.nitrate$/,
  );
  expectRefused(() => mixWater({ sources: [{ generalHardness: -3 }], wanted }), "sources[0].generalHardness");
  expectRefused(() => mixWater({ sources: [tap], wanted: {} }), "wanted");
  expectRefused(
    () => mixWater({ sources: [tap], wanted: { generalHardness: {} } }),
    "wanted.generalHardness",
  );
  expectRefused(
    () => mixWater({ sources: [tap], wanted: { generalHardness: { min: 8, max: 4 } } }),
    "wanted.generalHardness",
  );
  for (const span of [{ min: -5, max: -2 }, { min: -5 }, { min: -5, max: 4 }, { max: -2 }])
    expectRefused(
      () => mixWater({ sources: [tap], wanted: { carbonateHardness: span } }),
      /^wanted\.carbonateHardness\.(min|max)$/,
    );
  expectRefused(() => mixWater({ sources: [tap], wanted, tank: { nitrogen: 1, volume: 0 } }), "volume");
});
