import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { jsonSchemas, safeParseSpecies, speciesJsonSchema } from "../../src/schema";
import { type TraitPath, traitPaths, traitTable } from "../../src/species";
import { runs } from "../runs";
import { at, type Place, withAt, without } from "../species/json";
import { mutants } from "../species/mutants";
import { files } from "../species/records";
import { filesOf } from "./files";
import { problemsOf } from "./problems";

const validate = new Ajv2020({ allErrors: true }).compile(speciesJsonSchema);
/** A place as problems name it: `water.temperature[0].value`. */
const textOf = (place: Place) =>
  place
    .map((key) => (typeof key === "number" ? `[${key}]` : `.${key}`))
    .join("")
    .slice(1);

const tigerBarb = files.find(({ id }) => id === "puntigrus-tetrazona")?.json;

describe("an editor and parseSpecies agree", () => {
  test.each(files)("that $id is a record", ({ json }) => {
    validate(json);
    expect(validate.errors).toBeNull();
    expect(safeParseSpecies(json).success).toBe(true);
  });

  const statement = ["size", "adultLength", 0] as const;
  const water = ["water", "temperature", 0] as const;
  const broken: readonly (readonly [mistake: string, place: Place, put?: unknown])[] = [
    ["no id", ["id"]],
    ["an id in capitals", ["id"], "Puntigrus-tetrazona"],
    ["no taxonomy", ["taxonomy"]],
    ["a name of one word", ["taxonomy", "name"], "Puntigrus"],
    ["no authority", ["taxonomy", "authority"]],
    ["an empty family", ["taxonomy", "family"], ""],
    ["an unknown kind of animal", ["taxonomy", "kind"], "newt"],
    ["an empty list of synonyms", ["taxonomy", "synonyms"], []],
    ["no names", ["names"]],
    ["a language in words", ["names", "English"], ["tiger barb"]],
    ["an empty list of names", ["names", "en"], []],
    ["a number for an identifier", ["identifiers", "fishbase"], 4766],
    ["a source in capitals", ["sources", "USGS"], { cite: "usgs-nas" }],
    ["a source that cites nothing", ["sources", "usgs"], { at: "page 7" }],
    ["a memory that is false", ["sources", "usgs", "memory"], false],
    ["an unknown section", ["colour"], { body: [] }],
    ["a misspelt trait", ["water", "temprature"], []],
    ["a trait without statements", ["water", "temperature"], []],
    ["a trait that is no list", ["water", "temperature"], { min: 20, max: 26 }],
    ["a statement by nobody", [...statement, "by"]],
    ["a misspelt field", [...statement, "valeu"], 7],
    ["a word for a number", [...statement, "value"], "7"],
    ["a length of nothing", [...statement, "value"], 0],
    ["an unknown meaning", [...statement, "as"], "kept"],
    ["an unknown measure", [...statement, "measure"], "length"],
    ["a length with a stage", [...statement, "stage"], "adult"],
    ["a temperature with a sex", [...water, "sex"], "male"],
    ["a range of words", [...water, "value"], { min: "20", max: "26" }],
    ["a range with a third end", [...water, "value"], { min: 20, max: 26, mean: 23 }],
    ["a class no trait has", ["space", "zones", 0, "value"], "middle"],
    ["an act without a target", ["temperament", "acts", 0, "value"], { does: "chases" }],
    ["an unknown prey", ["predation", "eats", 0, "value"], { prey: "plant" }],
    ["a share above 1", ["space", "cover", 0, "value"], 20],
    ["half an animal", ["social", "group", 0, "value"], { least: 7.5 }],
    ["a word for yes", ["effects", "digs", 0, "value"], "yes"],
    ["a form without names", ["forms", "long-fin"], {}],
    ["a form in capitals", ["forms", "LongFin"], { names: { en: ["long-fin tiger barb"] } }],
    ["a form with a form", ["forms", "long-fin", "forms"], {}],
    ["a range without ends", [...water, "value"], {}],
    ["a unit of another measure", [...water, "unit"], "cm"],
    ["a unit as nobody spells it here", [...water, "unit"], "°F"],
    ["a unit of a share", ["space", "cover", 0, "unit"], "cm"],
    ["°F without saying so", [...water, "value"], { min: 68, max: 78 }],
    ["a current that falls", ["water", "flow", 0, "value"], { min: "strong", max: "gentle" }],
    ["a figure without meaning", [...water, "as"]],
    ["a length without measure", [...statement, "measure"]],
    ["a source that nobody read", ["sources", "usgs"], { cite: "usgs-nas" }],
    ["a source called as the trade is", ["sources", "common-practice"], { cite: "usgs-nas", at: "page 7" }],
    ["a blend without a word on how", ["diet", "pace"], [{ by: "curator", value: "fast" }]],
    ["a statement that says nothing", ["diet", "pace"], [{ by: "curator" }]],
    [
      "a line adopted and set aside",
      ["diet", "pace"],
      [{ by: "common-practice", value: "fast", adopt: "Seen.", setAside: "Not seen." }],
    ],
    [
      "a line that stands twice",
      ["diet", "pace"],
      [
        { by: "common-practice", note: "Seen." },
        { by: "common-practice", note: "Seen." },
      ],
    ],
    [
      "none beside something",
      ["care", "hazards"],
      [
        { by: "common-practice", value: "none" },
        { by: "common-practice", value: "bite" },
      ],
    ],
  ];

  for (const [mistake, place, put] of broken) {
    test(`that a record with ${mistake} is none`, () => {
      const record = put === undefined ? without(tigerBarb, place) : withAt(tigerBarb, place, put);
      expect(at(record, place)).toStrictEqual(put);
      expect(validate(record)).toBe(false);
      expect(problemsOf(record).map(({ path }) => path)).toSatisfy((paths: string[]) =>
        paths.some((path) => path.startsWith(textOf(place))),
      );
    });
  }

  const senseless: readonly (readonly [mistake: string, place: Place, put: unknown])[] = [
    ["a reversed range", [...water, "value"], { min: 26, max: 20 }],
    ["a source not in the record", [...water, "by"], "nobody"],
    ["an id of another name", ["id"], "puntius-tetrazona"],
  ];

  for (const [mistake, place, put] of senseless) {
    test(`not on ${mistake}, which only parseSpecies sees`, () => {
      const record = withAt(tigerBarb, place, put);
      expect(validate(record)).toBe(true);
      expect(safeParseSpecies(record).success).toBe(false);
    });
  }

  test("on whatever becomes of a record: what parseSpecies accepts, an editor does not underline", () => {
    fc.assert(
      fc.property(mutants, (mutant) => {
        expect(safeParseSpecies(mutant).success && !validate(mutant)).toBe(false);
      }),
      { numRuns: runs(300) },
    );
  });
});

describe("what an editor shows", () => {
  const described = (...place: string[]) =>
    String(at(speciesJsonSchema, ["properties", ...place, "description"]));
  const ofStatement = (trait: TraitPath, field: string) => {
    const [section = "", name = ""] = trait.split(".");
    return described(section, "properties", name, "items", "properties", field);
  };

  test.each(traitPaths)("what %s is, and what each of its words means", (trait) => {
    const { about, classes = {} } = traitTable[trait];
    const [section = "", name = ""] = trait.split(".");
    const shown = described(section, "properties", name);
    for (const sentence of [about, ...Object.values(classes)]) {
      expect(shown).toContain(sentence);
      expect(ofStatement(trait, "value")).toContain(sentence);
    }
    expect(ofStatement(trait, "by")).toContain("common-practice");
  });

  test("what an id, a name and a kind of animal is, and what a figure means", () => {
    expect(described("id")).toContain("accepted name");
    expect(described("names")).toContain("language");
    expect(described("taxonomy", "properties", "kind")).toContain("A frog that stays in the water.");
    expect(ofStatement("water.temperature", "as")).toContain("limit: Past this it dies");
    expect(ofStatement("size.adultLength", "measure")).toContain("TL: Total length");
  });

  test.each(Object.entries(jsonSchemas))(
    "the schema that every file of %s names is the one of src",
    (folder, schema) => {
      const file = new URL(`../../data/schemas/${folder}.schema.json`, import.meta.url);
      expect(JSON.parse(readFileSync(file, "utf8"))).toStrictEqual(schema);
      for (const { json } of filesOf(folder)) {
        expect(json).toHaveProperty("$schema", `../schemas/${folder}.schema.json`);
      }
    },
  );
});
