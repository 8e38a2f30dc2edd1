import { describe, expect, test } from "vitest";
import { InvalidInputError } from "../../src/errors";
import { parseSpecies, safeParseSpecies } from "../../src/schema";
import { leastRecord } from "../species/records";
import { problemsOf } from "./problems";

const trade = { by: "common-practice" };
const withNote = (note: string) => ({ ...leastRecord, effects: { digs: [{ ...trade, value: true, note }] } });

describe("text that could do harm", () => {
  test.each([
    ["a line feed", "calm\n# Heading"],
    ["an escape", "calm\u001b[31m"],
    ["a control of the second set", "calm\u009b31m"],
    ["a mark that turns the direction of reading", "calm\u202eevil"],
    ["an isolate", "calm\u2066evil"],
    ["a space of no width", "ca\u200blm"],
    ["a mark of byte order", "calm\ufeff"],
    ["a line separator", "calm\u2028evil"],
    ["a paragraph separator", "calm\u2029evil"],
    ["half a character", "calm\ud800"],
    ["the end of a comment", "calm */ evil()"],
    ["nothing", ""],
  ])("%s is refused wherever text stands", (_, text) => {
    const records: readonly (readonly [path: string, record: unknown])[] = [
      ["effects.digs[0].note", withNote(text)],
      ["names.en[0]", { ...leastRecord, names: { en: [text] } }],
      ["taxonomy.authority", { ...leastRecord, taxonomy: { ...leastRecord.taxonomy, authority: text } }],
      ["identifiers.ncbi", { ...leastRecord, identifiers: { ncbi: text } }],
      ["origin.regions[0].value", { ...leastRecord, origin: { regions: [{ ...trade, value: text }] } }],
      ...["en", "de"].map((language) => {
        const value = { en: "Calm.", [language]: text };
        const record = { ...leastRecord, care: { rehoming: [{ ...trade, value }] } };
        return [`care.rehoming[0].value.${language}`, record] as const;
      }),
    ];
    for (const [path, record] of records) {
      expect(problemsOf(record)).toContainEqual(expect.objectContaining({ path, code: "text" }));
    }
  });

  test.each([
    ["a joiner between letters", "می\u200cخواهم"],
    ["letters of any script", "Zebrabärbling, ゼブラフィッシュ, зебрафиш"],
    ["markup, which those who print it escape", "<b>*calm*</b> [x](y)"],
    ["characters beyond the first plane", "calm 🐟"],
  ])("%s is text like any other", (_, text) => {
    expect(problemsOf(withNote(text))).toStrictEqual([]);
  });
});

describe("too much of anything", () => {
  const many = (length: number) => Array.from({ length }, (_, index) => index);

  test.each([
    ["effects.digs[0].note", withNote("x".repeat(2001)), "text", "at most 2000 characters"],
    ["names.en[0]", { ...leastRecord, names: { en: ["x".repeat(121)] } }, "text", "at most 120 characters"],
    [
      "names.en",
      { ...leastRecord, names: { en: many(61).map((number) => `danio ${number}`) } },
      "too-many",
      "at most 60 entries",
    ],
    [
      "forms",
      {
        ...leastRecord,
        forms: Object.fromEntries(many(41).map((number) => [`form-${number}`, { names: { en: ["danio"] } }])),
      },
      "too-many",
      "at most 40 entries",
    ],
    [
      "size.lifespan",
      { ...leastRecord, size: { lifespan: many(501).map((number) => ({ ...trade, value: number + 1 })) } },
      "too-many",
      "at most 500 entries",
    ],
    ["", { ...leastRecord, names: { en: new Array(200_000).fill("danio") } }, "too-many", ""],
  ])("%s is told with the bound", (path, record, code, expected) => {
    expect(problemsOf(record)).toContainEqual(
      expect.objectContaining(expected ? { path, code, expected } : { code }),
    );
  });

  test("an id of more than 80 characters is refused", () => {
    expect(problemsOf({ ...leastRecord, id: `danio-${"x".repeat(80)}` })).toContainEqual(
      expect.objectContaining({ path: "id", code: "text", expected: "at most 80 characters" }),
    );
  });
});

describe("what fights back", () => {
  const throwing = Object.defineProperty({ ...leastRecord }, "water", {
    enumerable: true,
    get: () => {
      throw new Error("no");
    },
  });
  const revoked = () => {
    const { proxy, revoke } = Proxy.revocable({}, {});
    revoke();
    return proxy;
  };
  const circle: Record<string, unknown> = { ...leastRecord };
  circle.water = { temperature: [circle] };
  const crowd: unknown[] = [];
  crowd.push(...new Array(50).fill(crowd));

  test.each([
    ["a getter that throws", throwing, "water"],
    ["a proxy that was revoked", revoked(), ""],
    ["a proxy that was revoked, inside", { ...leastRecord, names: revoked() }, "names"],
    ["a record within itself", circle, "water.temperature[0].water"],
    ["a list of itself, many times", { ...leastRecord, names: crowd }, ""],
    ["a list without end", { ...leastRecord, names: new Array(4e9) }, "names"],
  ])("%s gives problems", (_, input, path) => {
    const parsed = safeParseSpecies(input);
    expect(parsed.success).toBe(false);
    expect(problemsOf(input)[0]?.path).toMatch(new RegExp(`^${path.replaceAll(/[[\]]/g, "\\$&")}`));
    expect(() => parseSpecies(input)).toThrow(InvalidInputError);
  });

  test("what is read is read once", () => {
    let reads = 0;
    const names = Object.defineProperty({}, "en", {
      enumerable: true,
      get: () => {
        reads += 1;
        return reads === 1 ? ["zebra danio"] : ["\u202e"];
      },
    });
    expect(parseSpecies({ ...leastRecord, names }).names).toStrictEqual({ en: ["zebra danio"] });
  });
});
