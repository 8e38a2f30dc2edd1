import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { root } from "../../data/reading/files";
import { version } from "../../package.json";
import { InvalidInputError } from "../../src/errors";
import { type Column, dataPackage, tables } from "../../src/tables";

const standard = (name: string): readonly Readonly<Record<string, string>>[] =>
  parse(readFileSync(join(root, "tests/tables/standards", name)), { columns: true, bom: true });
const extensions: Readonly<Record<string, { readonly terms: readonly string[] }>> = JSON.parse(
  readFileSync(join(root, "tests/tables/standards/darwin-core-extensions.json"), "utf8"),
);
const ets = standard("ecological-trait-data-standard.csv").filter(({ Deprecated }) => Deprecated !== "TRUE");

/** The terms that the standards hold. */
const known = new Set([
  ...standard("darwin-core-terms.csv").map((row) => row.term_iri),
  ...ets.map(({ Identifier }) => Identifier),
  ...Object.values(extensions).flatMap(({ terms }) => terms),
]);

const columns: readonly (readonly [string, Column])[] = Object.values(tables).flatMap((table) =>
  Object.entries(table.columns).map(([name, column]) => [`${table.name}.${name}`, column] as const),
);

test("every term of a column stands in its standard", () => {
  const terms = columns.flatMap(([name, { term }]) => (term ? [[name, term] as const] : []));
  expect(terms.length).toBeGreaterThan(20);
  const foreign = terms.filter(
    ([, term]) => !known.has(term) && !term.startsWith("http://purl.org/dc/terms/"),
  );
  expect(foreign).toStrictEqual([]);
});

test("every column says in a sentence what it holds", () => {
  for (const [, { about }] of columns) expect(about).toMatch(/^\w.*\.$/);
});

test("a package holds the catalog, or the tables that are asked for, and refers to none that is not there", () => {
  expect(dataPackage().resources.map(({ name }) => name)).toStrictEqual([
    "taxa",
    "names",
    "traits",
    "sources",
    "statements",
    "facts",
  ]);
  const [facts, ...others] = dataPackage(["facts", "taxa"]).resources;
  expect(others.map(({ path }) => path)).toStrictEqual(["taxa.csv"]);
  expect(facts?.schema.foreignKeys).toStrictEqual([
    { fields: ["taxonID"], reference: { resource: "taxa", fields: ["taxonID"] } },
  ]);
  expect(dataPackage().version).toBe(version);
});

test("there is no package of a table that there is not", () => {
  expect(() => Reflect.apply(dataPackage, undefined, [["fishes"]])).toThrow(InvalidInputError);
  expect(() => Reflect.apply(dataPackage, undefined, ["taxa"])).toThrow(InvalidInputError);
  expect(() => dataPackage(["facts", "facts"])).toThrow("tables: expected each once");
  expect(() => dataPackage([])).toThrow("tables: expected at least one");
});
