import { readFileSync } from "node:fs";
import { afterAll, expect, test } from "vitest";
import { checked } from "../../data/commands/check";
import { collectionOf, readCollection } from "../../data/reading/collection";
import type { DataFile } from "../../data/reading/files";
import { readJson } from "../../data/reading/json";
import { brokenRecords } from "./broken-records";
import { project, textOf } from "./project";

const path = "data/species/danio-rerio.json";
/** The record as it once was, so that its lines stay where they are. */
const whole = readFileSync(new URL("zebra-danio.txt", import.meta.url), "utf8");
const { root } = project(afterAll);
const collection = await readCollection(root);

/** The sources of the record, whatever is in data/sources by now. */
const cited = Object.values(JSON.parse(whole).sources as Record<string, { readonly cite: string }>);
const sources = [...new Set(cited.map(({ cite }) => cite))].map((id): DataFile => {
  const text = JSON.stringify({
    $schema: "../schemas/sources.schema.json",
    id,
    type: "book",
    title: "A book on danios",
  });
  return { folder: "sources", name: id, path: `data/sources/${id}.json`, text, ...readJson(text) };
});

/** What is told of the record with another text. */
async function toldOf(text: string): Promise<string> {
  const species = collection.files.species.map((file) =>
    file.path === path ? { ...file, text, ...readJson(text) } : file,
  );
  return textOf(await checked(collectionOf(root, { ...collection.files, species, sources }), "danio-rerio"));
}

test("the record itself is in order, and a hundred ways to break it are known", async () => {
  expect(await toldOf(whole)).toBe(`${path}: 0 problems.`);
  expect(brokenRecords.length).toBeGreaterThanOrEqual(100);
  expect(new Set(brokenRecords.map(({ mistake }) => mistake)).size).toBe(brokenRecords.length);
});

test.each(brokenRecords)("$mistake is told with its line, and how it should be", async (broken) => {
  const { from, to, told, at, example } = broken;
  expect(whole).toContain(from);
  const offset = whole.indexOf(from);
  const text = whole.replace(from, () => to);
  const said = await toldOf(text);
  const problem = said
    .split(/\n(?=data\/)/)
    .find((one) => told.test(one.split("\n  ")[0] ?? "") && /^[^ ]+:\d+:\d+: /.test(one));
  expect(problem, said).toBeDefined();
  const [, line] = /:(\d+):\d+: /.exec(problem ?? "") ?? [];
  const first = text.slice(0, offset).split("\n").length;
  const last = first + to.split("\n").length - 1;
  if (at === undefined) {
    expect(Number(line)).toBeGreaterThanOrEqual(first);
    expect(Number(line)).toBeLessThanOrEqual(last);
  } else expect(text.split("\n")[Number(line) - 1]?.startsWith(at), problem).toBe(true);
  if (example !== false) expect(problem).toContain("\n  For example: ");
});
