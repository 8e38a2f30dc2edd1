import { expect, test } from "vitest";
import danioRerio from "vivary/evidence/danio-rerio";
import { allRecords, recordById } from "../../src/evidence";

test("an id gives the record itself", () => {
  expect(recordById("danio-rerio")).toStrictEqual(danioRerio);
  for (const record of allRecords) expect(recordById(record.id)).toBe(record);
});

test.each(["", "unicorn", "Danio rerio", "0", "__proto__", "constructor"])("%o is no id", (id) => {
  expect(recordById(id)).toBeUndefined();
});

test("an id that moved gives the record it moved to", () => {
  expect(recordById("barbus-tetrazona")?.id).toBe("puntigrus-tetrazona");
});
