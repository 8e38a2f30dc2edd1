import { readFileSync } from "node:fs";
import { Ajv } from "ajv";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { released } from "../../docs/released";
import { license, version } from "../../package.json";

const read = (path: string) => readFileSync(new URL(path, import.meta.url), "utf8");
const text = read("../../CITATION.cff");
const citation = parse(text);
// github.com/citation-file-format/citation-file-format, schema.json, commit 0c5b4aa of 2026-01-20; CC BY 4.0.
const schema = JSON.parse(read("../outside/schemas/cff-1.2.0.json"));
const validate = new Ajv({ strict: false, allErrors: true, validateFormats: false }).compile(schema);

test("CITATION.cff is what the Citation File Format asks", () => {
  validate(citation);
  expect(validate.errors).toBeNull();
  expect(validate({ ...citation, type: "database" })).toBe(false);
});

test("it names package and data, in the version of the package", () => {
  expect([citation.type, citation.version]).toStrictEqual(["software", version]);
  expect(citation.references).toStrictEqual([expect.objectContaining({ type: "data", version })]);
});

test("a release is written in with its version and its day, for package and data, and nothing else changes", () => {
  const after = parse(released(text, "1.2.3", "2026-05-31"));
  validate(after);
  expect(validate.errors).toBeNull();
  const release = { version: "1.2.3", "date-released": "2026-05-31" };
  const [data] = citation.references;
  expect(after).toStrictEqual({ ...citation, ...release, references: [{ ...data, ...release }] });
  const withoutDay = (file: string) => file.replaceAll(/^ *date-released: .*\n/gm, "");
  expect(withoutDay(released(text, version, "2026-05-31"))).toBe(withoutDay(text));
});

test("the licence of the package points to the terms of code and figures", () => {
  const file = license.replace("SEE LICENSE IN ", "");
  const notice = read(`../../${file}`);
  for (const term of ["MIT licence", "CC BY-NC", "Red List", "commercial: true"])
    expect(notice).toContain(term);
});
