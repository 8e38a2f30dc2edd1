import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { DuckDBInstance } from "@duckdb/node-api";
import { Ajv } from "ajv";
import formats from "ajv-formats";
import { parse } from "csv-parse/sync";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { root } from "../../../data/reading/files";
import { dataPackageFiles, releasedRows } from "../../../data/tables/data-package";
import { allSpecies } from "../../../src/catalog";
import { allRecords, dataVersion } from "../../../src/evidence";
import { type DataPackage, type DataResource, type Row, tables } from "../../../src/tables";
import { someSpecies } from "../../drawn";

const rows = releasedRows(someSpecies(25, 0));
const files = dataPackageFiles(rows);
const described: DataPackage = JSON.parse(files["datapackage.json"] ?? "");

/** Whether the schema that the standard publishes takes a descriptor. */
const schema: object = JSON.parse(
  await readFile(join(root, "tests/tables/standards/datapackage-2.0.json"), "utf8"),
);
const ajv = new Ajv({ strict: false, allErrors: true, logger: false });
formats.default(ajv);
const isDataPackage = ajv.compile(schema);

describe("the descriptor", () => {
  test("is a Data Package by the schema of the standard", () => {
    isDataPackage(described);
    expect(isDataPackage.errors ?? []).toStrictEqual([]);
  });

  test.each([
    ["no resources", { ...described, resources: [] }],
    ["a type that there is not", withField({ name: "taxonID", type: "word" })],
    ["a field without a name", withField({ type: "string" })],
  ])("would not be one with %s", (_, broken) => {
    expect(isDataPackage(broken)).toBe(false);
  });

  test("names every file, and every column of it in its order", () => {
    const read = described.resources.map(({ path, schema }) => [path, schema.fields.map(({ name }) => name)]);
    expect(Object.keys(files).slice(1)).toStrictEqual(read.map(([path]) => path));
    for (const [path, names] of read) expect(parsed(String(path))[0]).toStrictEqual(names);
  });
});

test("the descriptor points to the terms of the figures, and names every source", () => {
  expect(described).toMatchObject({ licenses: [{ path: "NOTICE.md" }] });
  const { sources }: { readonly sources: readonly { readonly title: string; readonly path?: string }[] } =
    JSON.parse(files["datapackage.json"] ?? "");
  expect(sources).toHaveLength(rows.sources.length);
  expect(sources.find(({ title }) => title.startsWith("Thermal tolerance of thirteen"))).toStrictEqual({
    title: "Thermal tolerance of thirteen popular ornamental fish species (2019)",
    path: "https://doi.org/10.1016/j.aquaculture.2018.11.041",
  });
  for (const { path } of sources) expect(path ?? "https://").toMatch(/^https?:\/\/[^<>\s]*$/);
});

test("the descriptor tells the state of the data, and by which sum each file is whole", async () => {
  const { dataVersion: told, resources } = JSON.parse(files["datapackage.json"] ?? "");
  expect(told).toBe(dataVersion);
  for (const { path, bytes, hash } of resources) {
    const file = new Blob([files[path] ?? ""]);
    const sum = await crypto.subtle.digest("SHA-256", await file.arrayBuffer());
    expect([bytes, hash]).toEqual([file.size, `sha256:${Buffer.from(sum).toString("hex")}`]);
  }
});

function withField(field: object): object {
  const [first, ...others] = described.resources;
  return {
    ...described,
    resources: [{ ...first, schema: { ...first?.schema, fields: [field] } }, ...others],
  };
}

/** The lines of a file, as a parser of CSV reads them that holds to RFC 4180. */
const parsed = (path: string): readonly (readonly string[])[] =>
  parse(files[path] ?? "", { record_delimiter: "\r\n" });

test.each(Object.entries(rows))(
  "%s: what was written is read back cell by cell",
  (name, held: readonly Row[]) => {
    const [, ...lines] = parsed(`${name}.csv`);
    const cells = held.map((row) => Object.values(row).map((cell) => (cell === null ? "" : String(cell))));
    expect(lines).toStrictEqual(cells);
  },
);

test.each(Object.entries(rows))(
  "%s: every row has the columns of its table, in their order",
  (name, held: readonly Row[]) => {
    const columns = Object.keys(tables[name as keyof typeof rows].columns);
    expect(held.length).toBeGreaterThan(0);
    for (const row of held) expect(Object.keys(row)).toStrictEqual(columns);
  },
);

test.each(Object.entries(rows))("%s: no column is empty throughout", (name, held: readonly Row[]) => {
  const columns = Object.keys(tables[name as keyof typeof rows].columns);
  const empty = columns.filter((column) => held.every((row) => row[column] === null));
  // Overlaps are those of the species; of their forms whoever asks makes them.
  expect(empty).toStrictEqual(name === "overlaps" ? ["form", "otherForm"] : []);
});

test("no statement of a record is lost", () => {
  const count = (value: unknown): number =>
    Array.isArray(value) && value.every((held) => typeof held === "object" && held !== null && "by" in held)
      ? value.length
      : typeof value === "object" && value !== null
        ? Object.values(value).reduce((sum: number, held) => sum + count(held), 0)
        : 0;
  const held = allRecords.reduce((sum, { sources, taxonomy, names, ...traits }) => sum + count(traits), 0);
  expect(new Set(rows.statements.map(({ statementID }) => statementID)).size).toBe(held);
});

describe("a database", () => {
  let folder: string;
  let ask: (sql: string) => Promise<readonly Record<string, unknown>[]>;

  /** SQL that makes a table as its descriptor says: types, keys, and what cells may hold. */
  function tableOf({ name, schema: { fields, primaryKey, foreignKeys = [] } }: DataResource): string {
    const types = { string: "VARCHAR", number: "DOUBLE", integer: "INTEGER", boolean: "BOOLEAN" };
    const quoted = (names: readonly string[]) => names.map((column) => `"${column}"`).join(", ");
    const columns = fields.map(
      ({ name: column, type, constraints: { required, enum: words, minimum, maximum } = {} }) => {
        const checks = [
          ...(words ? [`"${column}" IN (${words.map((word) => `'${word}'`).join(", ")})`] : []),
          ...(minimum === undefined ? [] : [`"${column}" >= ${minimum}`]),
          ...(maximum === undefined ? [] : [`"${column}" <= ${maximum}`]),
        ].map((check) => ` CHECK (${check})`);
        return `"${column}" ${types[type]}${required ? " NOT NULL" : ""}${checks.join("")}`;
      },
    );
    const keys = foreignKeys.map(
      ({ fields: own, reference }) =>
        `FOREIGN KEY (${quoted(own)}) REFERENCES "${reference.resource}" (${quoted(reference.fields)})`,
    );
    return `CREATE TABLE "${name}" (${[...columns, `PRIMARY KEY (${quoted(primaryKey)})`, ...keys].join(", ")})`;
  }

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "vivary-tables-"));
    const connection = await (await DuckDBInstance.create(":memory:")).connect();
    ask = async (sql) => (await connection.runAndReadAll(sql)).getRowObjects();
    for (const resource of described.resources) {
      await writeFile(join(folder, resource.path), files[resource.path] ?? "");
      await ask(tableOf(resource));
      await ask(`COPY "${resource.name}" FROM '${join(folder, resource.path)}' (HEADER true)`);
    }
  });
  afterAll(() => rm(folder, { recursive: true }));

  test.each(Object.entries(rows))(
    "takes all of %s, with their types, keys and bounds",
    async (name, held) => {
      expect(await ask(`SELECT count(*)::INTEGER AS n FROM "${name}"`)).toStrictEqual([{ n: held.length }]);
    },
  );

  test("would refuse a fact of a species that there is not", async () => {
    await expect(
      ask(`INSERT INTO facts SELECT * REPLACE ('nobody' AS "taxonID", 'x' AS "factID") FROM facts LIMIT 1`),
    ).rejects.toThrow(/foreign key/i);
  });

  test("reckons with numbers without being told that they are", async () => {
    const guessed = await ask(
      `SELECT round(avg("max" - "min"), 6) AS width FROM read_csv('${join(folder, "facts.csv")}')
       WHERE trait = 'water.temperature' AND meaning = 'kept' AND form IS NULL`,
    );
    const widths = allSpecies.flatMap(({ water }) => {
      const { min, max } = water?.temperature?.value.kept ?? {};
      return min === undefined || max === undefined ? [] : [max - min];
    });
    const mean = widths.reduce((sum, width) => sum + width, 0) / widths.length;
    expect(guessed[0]?.width).toBeCloseTo(mean, 5);
  });

  test("finds the overlaps that the library finds", async () => {
    const found = await ask(`
      SELECT a."taxonID" AS one, b."taxonID" AS other, least(a."max", b."max") - greatest(a."min", b."min") AS shared,
        greatest(a."max", b."max") - least(a."min", b."min") AS covered
      FROM facts a JOIN facts b ON a.trait = b.trait AND a.meaning = b.meaning AND a."taxonID" < b."taxonID"
      WHERE a.trait = 'water.temperature' AND a.meaning = 'kept' AND a.form IS NULL AND b.form IS NULL`);
    const shares = new Map(
      found.map(({ one, other, shared, covered }) => [
        `${one} ${other}`,
        Math.max(0, Number(shared)) / Number(covered),
      ]),
    );
    const told = rows.overlaps.filter(({ axis, value }) => axis === "water.temperature" && value !== null);
    expect(told.length).toBeGreaterThan(200);
    for (const { taxonID, otherID, value } of told) {
      expect(shares.get(`${taxonID} ${otherID}`)).toBeCloseTo(value ?? Number.NaN, 12);
    }
  });

  test("leads from a fact to the statements and the source behind it", async () => {
    const found = await ask(`
      SELECT DISTINCT sources."sourceID" AS id FROM facts
      JOIN statements USING ("taxonID", trait, meaning) JOIN sources USING ("sourceID")
      WHERE facts."taxonID" = 'puntigrus-tetrazona' AND trait = 'water.pH' AND statements.counts = 'used'`);
    expect(found).toStrictEqual([{ id: "fishbase" }]);
  });

  test("leads from every fact to who said it, but from figures on which it does not rest", async () => {
    const unsaid = await ask(`
      WITH voices AS (SELECT "factID", "taxonID", unnest(string_split("saidBy", ' | ')) AS "by" FROM facts)
      SELECT "factID" FROM facts WHERE ("saidBy" IS NULL) <> coalesce(meaning IN ('wild', 'tested'), FALSE)
      UNION SELECT "factID" FROM voices WHERE NOT EXISTS
        (SELECT 1 FROM statements WHERE statements."taxonID" = voices."taxonID" AND statements."by" = voices."by")`);
    expect(unsaid).toStrictEqual([]);
  });
});
