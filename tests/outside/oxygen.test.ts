import { describe, expect, test } from "vitest";
import { oxygenSaturation } from "vivary/water";
import { readTable } from "./fixtures/read";

const columns = ["table", "temperature", "salinity", "pressure", "value", "tolerance"] as const;
const rows = readTable("oxygen-solubility.csv", columns);

/** What each table is and where it comes from stands at the head of the fixture. */
describe.each([
  { table: "gg92", cells: 205 },
  { table: "bk84-pressure", cells: 108 },
  { table: "en25814", cells: 31 },
  { table: "sm4500", cells: 9 },
  { table: "hach", cells: 192 },
])("oxygen saturation against $table", ({ table, cells }) => {
  const chosen = rows.filter((row) => row.table === table);

  test(`all ${cells} cells`, () => {
    expect(chosen).toHaveLength(cells);
    for (const row of chosen) {
      const found = oxygenSaturation({
        temperature: Number(row.temperature),
        salinity: Number(row.salinity),
        pressure: (Number(row.pressure) / 760) * 101.325,
      });
      const error = Math.abs(found - Number(row.value));
      expect(error, Object.values(row).join(" ")).toBeLessThanOrEqual(Number(row.tolerance));
    }
  });
});
