import { expect, test } from "vitest";
import { allRecords } from "vivary/evidence";
import { sourcesPage } from "../../docs/sources";

test("the page of the sources says what was taken from each, for bred forms too", async () => {
  const page = await sourcesPage();
  const cited = new Set(allRecords.flatMap(({ sources }) => Object.values(sources).map(({ cite }) => cite)));
  const entries = page.split("\n## ").slice(1);
  const untold = entries
    .filter((entry) => !entry.includes("\nTaken: "))
    .map((entry) => entry.split("\n")[0] ?? "");
  expect(entries.length).toBeGreaterThanOrEqual(cited.size);
  expect(untold.filter((id) => cited.has(id))).toStrictEqual([]);
});
