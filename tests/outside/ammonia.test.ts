import { describe, expect, test } from "vitest";
import { unionizedAmmoniaFraction } from "vivary/water";
import { readTable } from "./fixtures/read";

const rows = readTable("ammonia.csv", ["table", "temperature", "pH", "value", "tolerance"] as const);

/** What each table is and where it comes from stands at the head of the fixture. */
describe.each([
  { table: "fa16", cells: 115 },
  { table: "fa16-example", cells: 1 },
  { table: "aqion", cells: 6 },
  { table: "emerson", cells: 468 },
])("share of un-ionized ammonia against $table", ({ table, cells }) => {
  const chosen = rows.filter((row) => row.table === table);

  test(`all ${cells} cells`, () => {
    expect(chosen).toHaveLength(cells);
    for (const row of chosen) {
      const found = unionizedAmmoniaFraction({ temperature: Number(row.temperature), pH: Number(row.pH) });
      const error = Math.abs(found - Number(row.value));
      expect(error, Object.values(row).join(" ")).toBeLessThanOrEqual(Number(row.tolerance));
    }
  });
});
