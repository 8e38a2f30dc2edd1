import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { pathText } from "../../src/errors";
import { type DataFolder, jsonSchemas, problemsIn } from "../../src/schema";
import { type Place, withAt, without } from "../species/json";
import { filesOf } from "./files";

const folders = ["species", "sources", "moved", "legal", "standards"] as const;
const told = (folder: DataFolder, json: unknown) =>
  problemsIn(folder, json).map(({ path, code }) => [pathText(path), code]);

describe.each(folders)("data/%s", (folder) => {
  const files = filesOf(folder);
  const validate = new Ajv2020({ allErrors: true, strict: false }).compile(jsonSchemas[folder]);

  test("has files, and all of them are in order", () => {
    expect(files.length).toBeGreaterThan(0);
    for (const { name, json } of files) {
      expect(problemsIn(folder, json), name).toStrictEqual([]);
      validate(json);
      expect(validate.errors, name).toBeNull();
    }
  });

  test.each([null, [], "text", {}])("%o is no file of it", (json) => {
    expect(problemsIn(folder, json)).not.toStrictEqual([]);
    expect(validate(json)).toBe(false);
  });
});

const example = (folder: DataFolder, name: string) =>
  filesOf(folder).find((file) => file.name === name)?.json;
const study = example("sources", "yanar-2019.json");
const moved = example("moved", "barbus-tetrazona.json");
const law = example("legal", "us-alabama.json");
const standard = example("standards", "switzerland.json");
const requirement = ["instruments", 0, "requirements", 0] as const;

describe("what is wrong with a file", () => {
  const broken: readonly (readonly [mistake: string, folder: DataFolder, json: unknown, Place, unknown?])[] =
    [
      ["no title", "sources", study, ["title"]],
      ["an unknown type", "sources", study, ["type"], "article-about-fish"],
      ["an unknown field", "sources", study, ["container"], "Aquaculture"],
      ["a DOI with an address", "sources", study, ["DOI"], "https://doi.org/10.1016/x"],
      ["an address that runs a program", "sources", study, ["URL"], "javascript:alert(1)"],
      ["an author without a name", "sources", study, ["author", 0], { given: "M." }],
      ["a date in words", "sources", study, ["issued"], "2019"],
      ["no reason", "moved", moved, ["why"]],
      ["an id of one word", "moved", moved, ["to"], "barb"],
      ["no animals", "legal", law, ["listings", 0, "taxa"], []],
      ["an unknown basis", "legal", law, ["listings", 0, "basis"], "rumour"],
      ["a day of no act", "legal", law, ["listings", 0, "date"], "in force 2020"],
      ["hidden text", "legal", law, ["listings", 0, "effect"], "Allowed.\u202e"],
      ["an unknown force", "standards", standard, [...requirement, "force"], "custom"],
      ["an unknown kind", "standards", standard, [...requirement, "rule"], { kind: "fullness" }],
      ["a caution without an authority", "standards", standard, ["instruments", 0, "caution"], "Ask around."],
    ];

  for (const [mistake, folder, json, place, put] of broken) {
    test(`${mistake} in data/${folder} is told, and an editor underlines it`, () => {
      const file = put === undefined ? without(json, place) : withAt(json, place, put);
      const at = pathText(place);
      expect(told(folder, json)).toStrictEqual([]);
      expect(told(folder, file).some(([path = ""]) => path.startsWith(at) || at.startsWith(path))).toBe(true);
      expect(new Ajv2020({ strict: false }).compile(jsonSchemas[folder])(file)).toBe(false);
    });
  }

  test("an id that forwards to itself is told", () => {
    expect(told("moved", withAt(moved, ["to"], "barbus-tetrazona"))).toStrictEqual([["to", "conflict"]]);
  });

  test("a requirement named twice in a jurisdiction is told", () => {
    const first = { ...requirementsOf(standard)[0] };
    const file = withAt(standard, ["instruments", 0, "requirements", "-"], first);
    const last = requirementsOf(standard).length;
    expect(told("standards", file)).toStrictEqual([[`instruments[0].requirements[${last}].id`, "conflict"]]);
  });

  test("a length class out of order is told", () => {
    const classes = [
      { upTo: 10, litres: 1 },
      { upTo: 5, litres: 2 },
    ];
    expect(told("standards", withAt(standard, [...requirement, "rule", "classes"], classes))).toStrictEqual([
      ["instruments[0].requirements[0].rule.classes", "range"],
    ]);
  });
});

function requirementsOf(json: unknown): readonly object[] {
  const { instruments } = json as { instruments: readonly { requirements: readonly object[] }[] };
  return instruments[0]?.requirements ?? [];
}

test("an unknown folder is refused", () => {
  for (const folder of ["", "fish", "__proto__", "constructor"]) {
    expect(() => problemsIn(folder as DataFolder, {})).toThrow("folder: expected one of species, sources");
  }
});

test("what editors read cannot be changed", () => {
  expect(Object.isFrozen(jsonSchemas.species)).toBe(true);
  expect(Object.isFrozen(jsonSchemas.legal.properties)).toBe(true);
});
