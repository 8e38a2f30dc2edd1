import { readFileSync } from "node:fs";
import { Cite } from "@citation-js/core";
import "@citation-js/plugin-csl";
import { Ajv } from "ajv";
import { describe, expect, test } from "vitest";
import { sources } from "../../../src/evidence";
import type { Source } from "../../../src/schema";
import { filesOf } from "../../schema/files";

// github.com/citation-style-language/schema, schemas/input/csl-data.json, commit e3ce254 of 2023-01-25; MIT licence.
const csl = JSON.parse(readFileSync(new URL("../../outside/schemas/csl-data.json", import.meta.url), "utf8"));
const files = filesOf("sources").map(({ json }) => json as Source & { readonly $schema?: string });

test("every file of data/sources is there, by id", () => {
  expect(Object.keys(sources).sort()).toStrictEqual(files.map(({ id }) => id).sort());
});

test("all are CSL-JSON by the schema of its authors", () => {
  const validate = new Ajv({ strict: false, allErrors: true }).compile(csl);
  validate(Object.values(sources));
  expect(validate.errors).toBeNull();
  expect(validate([{ ...sources.fishbase, doi: "10.1000/1" }])).toBe(false);
});

describe.each(files)("$id", ({ $schema, note, custom, ...item }) => {
  test("says what its file says, what we remarked while reading apart", () => {
    const { custom: apart, ...cited } = sources[item.id] ?? {};
    expect(cited).toStrictEqual(item);
    expect(apart?.remark).toBe(note);
    expect(apart?.commercial).toBe(custom?.commercial);
  });

  test("is printed with its title, and without our remarks", () => {
    const printed = new Cite(sources[item.id] ?? {}).format("bibliography", {
      format: "text",
      template: "apa",
      lang: "en-US",
    });
    expect(printed).toContain(item.title.slice(0, 12));
    if (note) expect(printed).not.toContain(note);
  });
});

test.each(["__proto__", "constructor", "toString", "nobody-1900"])("%s is no source", (id) => {
  expect(sources[id]).toBeUndefined();
});

test("nobody can change a source", () => {
  expect(() => Object.assign(sources.fishbase ?? {}, { title: "Another" })).toThrow(TypeError);
  expect(() => Object.assign(sources, { another: sources.fishbase })).toThrow(TypeError);
});
