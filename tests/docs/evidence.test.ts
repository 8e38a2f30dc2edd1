import { readFileSync } from "node:fs";
import { globSync } from "tinyglobby";
import { expect, test } from "vitest";
import { root } from "../../data/reading/files";
import { evidencePage } from "../../docs/evidence";
import { recalled } from "../../docs/recalled";
import { allRecords } from "../../src/evidence";
import { statementsOf, traitPaths } from "../../src/species";

const text = evidencePage();
const totals = /\| together +\| (\d+) +\| (\d+) +\|/.exec(text)?.slice(1).map(Number);

/** The statements that stand somewhere in the JSON of a record: whatever says who said it. */
function statementsIn(held: unknown): number {
  if (typeof held !== "object" || held === null) return 0;
  if ("by" in held) return 1;
  return Object.values(held).reduce((sum: number, part) => sum + statementsIn(part), 0);
}

test("every statement is counted, of species and of forms", () => {
  const of = (parts: readonly unknown[]) => parts.reduce((sum: number, part) => sum + statementsIn(part), 0);
  expect(totals).toStrictEqual([
    of(allRecords.map(({ forms, ...species }) => species)),
    of(allRecords.map(({ forms }) => forms)),
  ]);
});

test("a trait tells how many forms state it", () => {
  const forms = allRecords.flatMap((record) => Object.values(record.forms ?? {}));
  for (const path of traitPaths) {
    const row = text.split("\n").find((line) => line.includes(`\`${path}\``)) ?? "";
    const stating = forms.filter((form) => statementsOf(form, path).length > 0).length;
    expect(Number(row.split("|").at(-2)), path).toBe(stating);
  }
});

test("what the code took from memory is listed, with what would settle it, and nothing else", () => {
  const files = globSync("**/*.ts", {
    cwd: `${root}/src`,
    ignore: ["**/generated.ts", "{catalog,evidence}/species/**"],
  });
  const recalling = files.filter((file) =>
    readFileSync(`${root}/src/${file}`, "utf8").includes("from memory"),
  );
  expect(recalled.map(({ file }) => file).sort()).toStrictEqual(recalling.sort());
});
