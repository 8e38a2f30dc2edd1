import fc from "fast-check";
import { expect, test } from "vitest";
import { nitrateLimit, weeklyChange } from "../../../src/advice";
import { expectRefused } from "../../refused";

test("is what a week adds over what the limit leaves", () => {
  // 10 mg of nitrogen a day are 310 mg of nitrate a week (N 14.007, NO3 62.005), 3.1 mg/L in 100 L.
  expect(weeklyChange({ nitrogen: 10, volume: 100 })?.share).toBeCloseTo(3.0988 / nitrateLimit, 4);
  expect(weeklyChange({ nitrogen: 10, volume: 100, nitrate: 24, limit: 44 })).toMatchObject({
    litres: expect.closeTo(15.494, 2),
  });
});

test("holds nitrate at its limit, week after week", () => {
  const tanks = fc.record({
    nitrogen: fc.double({ min: 0.1, max: 100, noNaN: true }),
    volume: fc.double({ min: 10, max: 1000, noNaN: true }),
    nitrate: fc.double({ min: 0, max: 20, noNaN: true }),
    limit: fc.double({ min: 21, max: 100, noNaN: true }),
  });
  fc.assert(
    fc.property(tanks, (tank) => {
      const change = weeklyChange(tank);
      const rise = (7 * tank.nitrogen * (62.0049 / 14.0067)) / tank.volume;
      if (!change) {
        expect(tank.nitrate + rise).toBeGreaterThan(tank.limit);
        return;
      }
      let held = tank.limit;
      for (let week = 0; week < 50; week += 1)
        held = held * (1 - change.share) + tank.nitrate * change.share + rise;
      expect(held).toBeCloseTo(tank.limit, 6);
    }),
  );
});

test("there is none where the new water holds as much already, or all of it would not do", () => {
  expect(weeklyChange({ nitrogen: 1, volume: 100, nitrate: 50 })).toBeUndefined();
  expect(weeklyChange({ nitrogen: 1000, volume: 10 })).toBeUndefined();
});

test("of nothing given off is none", () => {
  expect(weeklyChange({ nitrogen: 0, volume: 100 })).toEqual({ share: 0, litres: 0 });
});

test("figures that cannot be are refused", () => {
  expectRefused(() => weeklyChange({ nitrogen: -1, volume: 100 }), "nitrogen");
  expectRefused(() => weeklyChange({ nitrogen: 1, volume: 0 }), "volume");
  expectRefused(() => weeklyChange({ nitrogen: 1, volume: 1, limit: 0 }), "limit");
  expectRefused(() => weeklyChange({ nitrogen: 1, volume: 1, nitrate: Number.NaN }), "nitrate");
});
