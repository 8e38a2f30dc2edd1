import { expect, test } from "vitest";
import { waterDensity } from "vivary/water";
import { readFixture } from "./fixtures/read";

interface Row {
  temperature: number;
  salinity?: number;
  value: number;
}

interface Fixture {
  checkValues: { rows: { temperature68: number; salinity: number; value: number }[] };
  iapws95: { rows: Row[] };
  teos10: { rows: Row[] };
  crc: { rows: Row[] };
}

/** Source, basis and tolerance of each part stand in the fixture. */
const { checkValues, iapws95, teos10, crc }: Fixture = JSON.parse(readFixture("density.json"));

test("reproduces the check values printed with the equation", () => {
  expect(checkValues.rows).toHaveLength(4);
  for (const { temperature68, salinity, value } of checkValues.rows) {
    const found = 1000 * waterDensity({ temperature: temperature68 / 1.00024, salinity });
    expect(Math.abs(found - value)).toBeLessThan(0.00001);
  }
});

test.each([
  { name: "IAPWS-95, pure water", rows: iapws95.rows, cells: 38, tolerance: 0.002 },
  { name: "TEOS-10, brackish and sea water", rows: teos10.rows, cells: 12, tolerance: 0.005 },
  { name: "the CRC Handbook table", rows: crc.rows, cells: 16, tolerance: 0.003 },
])("agrees with $name within $tolerance kg/m³", ({ rows, cells, tolerance }) => {
  expect(rows).toHaveLength(cells);
  for (const { value, ...water } of rows) {
    const error = Math.abs(1000 * waterDensity(water) - value);
    expect(error, JSON.stringify(water)).toBeLessThanOrEqual(tolerance);
  }
});
