import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatRecord } from "../../../data/writing/format-record";
import { jsonSchemas } from "../../../src/schema";
import { runs } from "../../runs";
import { mutants } from "../../species/mutants";
import { files } from "../../species/records";

const format = (record: unknown) => formatRecord(record, jsonSchemas.species);

/** The same with the fields of every object in the opposite order. */
function backwards(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(backwards);
  if (typeof value !== "object" || value === null) return value;
  const fields = Object.entries(value).map(([key, held]) => [key, backwards(held)]);
  return Object.fromEntries(fields.reverse());
}

describe.each(files)("$id", ({ json }) => {
  const lines = format(json).split("\n");

  test("says the same when formatted", () => {
    expect(JSON.parse(format(json))).toStrictEqual(json);
  });

  test("has one statement or source a line, and no line with two", () => {
    const items = lines.filter((line) => /"(by|cite)":/.test(line)).map((line) => line.replace(/,$/, ""));
    for (const item of items) {
      const { by, cite } = JSON.parse(item.replace(/^ +("[a-z0-9-]+": )?/, ""));
      expect([by, cite].filter(Boolean)).toHaveLength(1);
    }
    expect(items).toHaveLength(JSON.stringify(json).match(/"(by|cite)":/g)?.length ?? 0);
  });

  test("has its sections in one order, whatever order they came in", () => {
    const sections = (text: string) => text.split("\n").filter((line) => /^ {2}"/.test(line));
    expect(sections(format(backwards(json)))).toStrictEqual(sections(format(json)));
  });
});

test("a statement reads: who, what, in which unit, and what it means", () => {
  const statement = {
    note: "Warm.",
    as: "kept",
    unit: "degF",
    value: { max: 77, min: 68 },
    by: "common-practice",
  };
  expect(format({ water: { temperature: [statement] } })).toBe(`{
  "water": {
    "temperature": [
      { "by": "common-practice", "value": { "min": 68, "max": 77 }, "unit": "degF", "as": "kept", "note": "Warm." }
    ]
  }
}
`);
});

test("names, sources and forms keep the order that the record gives them", () => {
  const forms = { veil: { names: { pl: ["welon"], en: ["veil"] } }, blue: { names: { en: ["blue"] } } };
  const sources = { study: { at: "page 7", cite: "a-study" }, book: { cite: "a-book" } };
  expect(format({ forms, sources })).toBe(`{
  "sources": {
    "study": { "cite": "a-study", "at": "page 7" },
    "book": { "cite": "a-book" }
  },
  "forms": {
    "veil": {
      "names": {
        "pl": ["welon"],
        "en": ["veil"]
      }
    },
    "blue": {
      "names": {
        "en": ["blue"]
      }
    }
  }
}
`);
});

test("whatever the record, nothing is lost and a second time changes nothing", () => {
  fc.assert(
    fc.property(mutants, (mutant) => {
      const text = format(mutant);
      expect(isDeepStrictEqual(JSON.parse(text), JSON.parse(JSON.stringify(mutant)))).toBe(true);
      expect(format(JSON.parse(text))).toBe(text);
    }),
    { numRuns: runs(200) },
  );
});
