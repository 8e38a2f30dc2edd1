import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type DuckDBConnection, DuckDBInstance } from "@duckdb/node-api";
import { afterAll, beforeAll, expect, test } from "vitest";
import { root } from "../../../data/reading/files";
import { dataPackageFiles, releasedRows } from "../../../data/tables/data-package";
import { someSpecies } from "../../drawn";

const guide = await readFile(join(root, "docs/guides/research.md"), "utf8");
const queries = [...guide.matchAll(/^```sql\n(.*?)^```/gms)].map(({ 1: sql = "" }) => sql);

const files = dataPackageFiles(releasedRows(someSpecies(40, 0)));
let folder: string;
let connection: DuckDBConnection;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "vivary-guide-"));
  await Promise.all(Object.entries(files).map(([name, text]) => writeFile(join(folder, name), text)));
  connection = await (await DuckDBInstance.create(":memory:")).connect();
  await connection.run(`SET file_search_path = '${folder}'`);
});
afterAll(() => rm(folder, { recursive: true }));

test("the guide has snippets of SQL", () => {
  expect(queries.length).toBeGreaterThan(3);
});

test.each(queries)("answers the question of the guide:\n%s", async (sql) => {
  const rows = (await connection.runAndReadAll(sql)).getRowObjects();
  expect(rows.length).toBeGreaterThan(0);
});
