import { createContext, runInContext } from "node:vm";
import ts from "typescript";
import { describe, expect, test } from "vitest";
import { modulesOf } from "../../../data/modules/modules";
import { groups } from "../../../data/modules/search-names";
import { resolve } from "../../../src/species";
import { leastRecord } from "../../species/records";

/** What may be taken for code, for the end of a comment or of a script, or turns the direction of reading. */
const hostile = [
  "*/ ran.push(1); /*",
  "`; ran.push(2); `",
  // biome-ignore lint/suspicious/noTemplateCurlyInString: the text itself is what is tested.
  "${ran.push(3)}",
  `'"); ran.push(4); ("'`,
  "\\'); ran.push(5); ('\\",
  "</script><script>ran.push(6)</script><!--",
  "\u2028ran.push(7)\u2029\nran.push(7)\r\n",
  "\u202Etxet eht snrut\u202C\u2066\u200F\uFEFF",
  "\uD800 alone, \0 none, \u{1F41F} a fish",
];
const text = hostile.join(" ");

const record = {
  ...leastRecord,
  taxonomy: { ...leastRecord.taxonomy, authority: text, family: text, note: text },
  names: { en: [text], de: [text] },
  sources: { study: { cite: text, at: text } },
  care: { rehoming: [{ by: "study", value: { en: text, de: text }, note: text }] },
  forms: { blue: { names: { en: [text] } } },
};
const listing = {
  jurisdiction: text,
  instrument: text,
  code: text,
  date: text,
  effect: text,
  basis: "published",
  at: text,
} as const;

const source = { id: "study", type: "book", title: text, custom: { remark: text } } as const;

const modules = modulesOf({
  records: [record],
  sources: [source],
  legal: [
    { ...listing, taxa: [text] },
    { ...listing, effect: "of the form", taxa: [text], forms: ["blue", "red"] },
    { ...listing, taxa: [text], forms: ["red"] },
  ],
  lawgivers: [text],
  moved: [["danio-frankei", "danio-rerio"]],
  jurisdictions: [{ text }],
});
/** The profile as the catalog ships it: without the keys of sources. */
const { said: _, ...rehoming } = resolve(record).care?.rehoming ?? {};
const { blue } = resolve(record).forms ?? {};
const forms = { blue: { ...blue, listings: [{ ...listing, effect: "of the form" }] } };
const profile = { ...resolve(record), forms, care: { rehoming }, listings: [listing] };

const namesIn = (language: "en" | "de") => ({
  language,
  names: { "danio-rerio": [text], ...(language === "en" && { "danio-rerio/blue": [text] }) },
  groups: groups[language],
});

/** What a module exports when it runs, and what it did beside. */
function evaluated(code: string) {
  const { outputText } = ts.transpileModule(code, {
    compilerOptions: { module: ts.ModuleKind.CommonJS, target: ts.ScriptTarget.ES2022 },
  });
  const context = createContext({ exports: {}, ran: [] });
  runInContext(outputText, context);
  return JSON.parse(runInContext("JSON.stringify({ exports, ran })", context));
}

describe("whatever a record says", () => {
  test.each([
    ["catalog/species/danio-rerio.ts", "default", profile],
    ["evidence/species/danio-rerio.ts", "default", record],
    ["catalog/generated.ts", "texts", [["danio-rerio", JSON.stringify(profile)]]],
    ["evidence/generated.ts", "texts", [["danio-rerio", JSON.stringify(record)]]],
    ["evidence/bibliography/generated.ts", "items", [source]],
    ["standards/generated.ts", "jurisdictions", [{ text }]],
    ["plan/generated.ts", "lawgivers", [text]],
    ["shelf/generated.ts", "moved", [["danio-frankei", "danio-rerio"]]],
    ["search/generated.ts", "scientific", [["Danio rerio", text, "Cypriniformes", "Danio frankei"]]],
    ["search/languages/en.ts", "default", namesIn("en")],
    ["search/languages/de.ts", "default", namesIn("de")],
  ])("%s holds it and runs nothing", (path, name, held) => {
    const { exports, ran } = evaluated(modules.get(path) ?? "");
    expect(exports[name]).toStrictEqual(JSON.parse(JSON.stringify(held)));
    expect(ran).toStrictEqual([]);
  });

  test("its letters stand in no comment, and all that is not plain is written as a number", () => {
    for (const code of modules.values()) {
      expect(code).toMatch(/^[\n -~]*$/);
      expect(code).not.toContain("</");
      expect(code).not.toContain("<!");
    }
  });

  test("what the package ships of it does the same once esbuild has written it anew", async () => {
    const { transform } = await import("esbuild");
    const source = modules.get("catalog/species/danio-rerio.ts") ?? "";
    const { code } = await transform(source, { loader: "ts", format: "cjs" });
    expect(code).toMatch(/^[\n -~]*$/);
    expect(code).not.toContain("</script");
    const context = createContext({ module: {}, ran: [] });
    runInContext(code, context);
    const { held, ran } = JSON.parse(
      runInContext("JSON.stringify({ held: module.exports.default, ran })", context),
    );
    expect(held).toStrictEqual(JSON.parse(JSON.stringify(profile)));
    expect(ran).toStrictEqual([]);
  });
});

test("a law that names the species by an old name, or its old genus, reaches it", () => {
  const danio = { ...leastRecord, taxonomy: { ...leastRecord.taxonomy, synonyms: ["Brachydanio rerio"] } };
  const lawOn = (taxon: string) =>
    modulesOf({
      records: [danio],
      sources: [],
      legal: [{ ...listing, instrument: "An act", taxa: [taxon] }],
      lawgivers: [],
      moved: [],
      jurisdictions: [],
    }).get("catalog/species/danio-rerio.ts");
  for (const taxon of ["Danio rerio", "Danio", "Danionidae", "Brachydanio rerio", "Brachydanio"])
    expect(lawOn(taxon), taxon).toContain("An act");
  for (const taxon of ["Danio kyathit", "Brachydanio albolineata", "Devario"])
    expect(lawOn(taxon), taxon).not.toContain("An act");
});

describe("the version of the data", () => {
  const data = {
    records: [record],
    sources: [source],
    legal: [],
    lawgivers: [],
    moved: [],
    jurisdictions: [],
  };
  const versionOf = (changed: Partial<typeof data> | { readonly moved: [string, string][] }) =>
    evaluated(modulesOf({ ...data, ...changed }).get("generated.ts") ?? "").exports.dataVersion;

  test("is the same for the same data", () => {
    expect(versionOf({})).toMatch(/^[0-9a-f]{12}$/);
    expect(versionOf({})).toBe(versionOf(structuredClone(data)));
  });

  test("changes with a record, a source and an id that moved", () => {
    const versions = [
      versionOf({}),
      versionOf({ records: [{ ...record, names: { en: ["danio"], de: [] } }] }),
      versionOf({ sources: [{ ...source, title: "Another" }] }),
      versionOf({ moved: [["danio-frankei", "danio-rerio"]] }),
    ];
    expect(new Set(versions).size).toBe(versions.length);
  });
});
