import { expect, test } from "vitest";
import { carbonDioxide, carbonDioxideDomain } from "vivary/water";
import { readFixture } from "./fixtures/read";

interface Fixture {
  worked: {
    rows: {
      temperature: number;
      carbonateHardness: number;
      pH: number;
      value: number;
      atIonicStrength005: number;
    }[];
  };
  tucker: { rows: { temperature: number; pH: number; value: number }[] };
  millero: { rows: { temperature: number; pK1: number; pK2: number }[] };
}

/** Source, basis and tolerance of each part stand in the fixture. */
const { worked, tucker, millero }: Fixture = JSON.parse(readFixture("carbonate.json"));

/** °dH that hold 1 mg/L CaCO3: 1 °dH is 10 mg/L CaO; molar masses 100.0872 and 56.0774 g/mol. */
const dH = 56.0774 / (10 * 100.0872);

test("agrees with separately worked values", () => {
  expect(worked.rows).toHaveLength(162);
  for (const { value, atIonicStrength005, ...water } of worked.rows) {
    const found = carbonDioxide(water);
    const where = JSON.stringify(water);
    expect(Math.abs(found - value), where).toBeLessThanOrEqual(Math.max(0.0006, 2e-5 * value));
    // "Some 7 % lower" at ionic strength 0.005 mol/L, as the documentation says.
    if (value > 1) {
      expect(atIonicStrength005 / found, where).toBeGreaterThan(0.91);
      expect(atIonicStrength005 / found, where).toBeLessThan(0.94);
    }
  }
});

test("agrees with the printed factors of Tucker 1984", () => {
  expect(tucker.rows).toHaveLength(90);
  for (const { temperature, pH, value } of tucker.rows) {
    // A factor per mg/L CaCO3, taken at 200 mg/L, where hydroxide and hydrogen ions do not count.
    const found = carbonDioxide({ temperature, pH, carbonateHardness: 200 * dH }) / 200;
    const tolerance = Math.max(0.026 * value, 0.001);
    expect(Math.abs(found - value), `${temperature} ${pH}`).toBeLessThanOrEqual(tolerance);
  }
});

test("agrees with the worked example of Tucker 1984: 15.65 mg/L within 0.5 %", () => {
  const found = carbonDioxide({ temperature: 25, pH: 6.8, carbonateHardness: 50 * dH });
  expect(Math.abs(found / 15.65 - 1)).toBeLessThan(0.005);
});

test("agrees with the constants of Millero 2010 within 0.4 %", () => {
  expect(millero.rows).toHaveLength(11);
  for (const { temperature, pK1, pK2 } of millero.rows) {
    // At pH 7 hydroxide and hydrogen ions cancel within 0.01 %: 1 mmol/L alkalinity, in mg/L CO2.
    const bicarbonate = 1 / (1 + 2 * 10 ** (7 - pK2));
    const expected = bicarbonate * 10 ** (pK1 - 7) * 44.0095;
    const found = carbonDioxide({ temperature, pH: 7, carbonateHardness: 50.0436 * dH });
    expect(Math.abs(found / expected - 1), `${temperature}`).toBeLessThan(0.004);
  }
});

test("the hardest and saltiest water in which it holds takes a seventh off, by the Davies equation", () => {
  const { carbonateHardness, salinity } = carbonDioxideDomain;
  const { pK1, pK2 } = millero.rows.find(({ temperature }) => temperature === 25) ?? expect.fail();
  // Calcium hydrogen carbonate: 1.5 times its alkalinity; sea salt: 0.0199 mol/kg for each g/kg (Millero 1982, from memory).
  const hardest = 1.5 * (carbonateHardness.max * 0.35665e-3);
  const saltiest = 0.0199 * salinity.max;
  const activity = (strength: number) => {
    const root = Math.sqrt(strength);
    return 10 ** (-0.509 * (root / (1 + root) - 0.3 * strength));
  };
  // What is there is the activity of bicarbonate times the hydrogen ions, over the constant of Millero 2010.
  const trueShare = (degrees: number, grams: number, strength: number) => {
    const bicarbonate = (degrees * 0.35665e-3) / (1 + 2 * 10 ** (7 - pK2));
    const there = activity(strength) * bicarbonate * 10 ** (pK1 - 7) * 44.0095 * 1000;
    return there / carbonDioxide({ temperature: 25, pH: 7, carbonateHardness: degrees, salinity: grams });
  };
  expect(trueShare(0.005 / (1.5 * 0.35665e-3), 0, 0.005)).toBeCloseTo(0.927, 2);
  expect(trueShare(carbonateHardness.max, 0, hardest)).toBeCloseTo(0.88, 2);
  expect(trueShare(carbonateHardness.max, salinity.max, hardest + saltiest)).toBeCloseTo(0.86, 2);
});
