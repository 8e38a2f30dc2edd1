import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { type DataFolder, jsonSchemas } from "../../src/schema";
import { classes, traitTable } from "../../src/species";
import { brokenRecords } from "../data/broken-records";
import { at } from "../species/json";

interface Shown {
  readonly description?: string;
  readonly $ref?: string;
  readonly properties?: Readonly<Record<string, Shown>>;
  readonly additionalProperties?: Shown | boolean;
  readonly items?: Shown;
  readonly anyOf?: readonly Shown[];
  readonly oneOf?: readonly Shown[];
}

/** Every field that a file may hold, by where it stands. */
function fieldsIn(schema: Shown, above = ""): readonly (readonly [place: string, field: Shown])[] {
  const { properties = {}, additionalProperties, items } = schema;
  const choices = [...(schema.anyOf ?? []), ...(schema.oneOf ?? [])];
  const chosen = typeof additionalProperties === "object" ? [additionalProperties] : [];
  return [
    ...Object.entries(properties).flatMap(([name, field]) => [
      [`${above}.${name}`, field] as const,
      ...fieldsIn(field, `${above}.${name}`),
    ]),
    ...(items ? fieldsIn(items, above) : []),
    ...chosen.flatMap((held) => fieldsIn(held, `${above}.*`)),
    ...choices
      .filter((choice) => choice.additionalProperties === false)
      .flatMap((choice) => fieldsIn(choice, above)),
  ];
}

describe("while a file is typed, an editor", () => {
  test.each(Object.keys(jsonSchemas))("explains every field of data/%s", (folder) => {
    const fields = fieldsIn(jsonSchemas[folder as DataFolder]);
    expect(fields.length).toBeGreaterThanOrEqual(4);
    const silent = fields.filter(([, { description, $ref }]) => !description && !$ref);
    expect(silent.map(([place]) => place)).toStrictEqual([]);
  });

  test.each([
    ["target", classes.target, "temperament.acts"],
    ["when", classes.when, "temperament.acts"],
    ["prey", classes.prey, "predation.eats"],
    ["zone", classes.zone, "space.territory"],
  ] as const)("offers every word for %s with its sentence", (field, words, trait) => {
    const [section = "", name = ""] = trait.split(".");
    const value = ["properties", section, "properties", name, "items", "properties", "value"];
    const offered = at(jsonSchemas.species, [...value, "anyOf", 0, "properties", field, "oneOf"]);
    expect(offered).toStrictEqual(
      Object.entries(words).map(([word, description]) => ({ const: word, description })),
    );
  });

  test("says between which figures a trait lies, as the checks do", () => {
    const { min, max } = traitTable["water.temperature"].plausible ?? {};
    expect([min, max]).toStrictEqual([-2, 48]);
    const temperature = ["properties", "water", "properties", "temperature"];
    expect(at(jsonSchemas.species, [...temperature, "description"])).toContain(`between ${min} and ${max}`);
  });

  test("reads of a form what it reads of its species", () => {
    const form = at(jsonSchemas.species, ["properties", "forms", "additionalProperties"]);
    expect(at(form, ["properties", "water"])).toStrictEqual({ $ref: "#/properties/water" });
  });

  test("underlines most of what is broken in a single line", () => {
    const validate = new Ajv2020({ allErrors: true }).compile(jsonSchemas.species);
    const whole = readFileSync(new URL("../data/zebra-danio.txt", import.meta.url), "utf8");
    expect(validate(JSON.parse(whole))).toBe(true);
    const records = brokenRecords.flatMap(({ from, to }) => parsed(whole.replace(from, () => to)));
    const refused = records.filter((record) => !validate(record));
    expect(records.length).toBeGreaterThanOrEqual(107);
    expect(refused.length).toBeGreaterThanOrEqual(64);
  });
});

/** What a text holds; nothing where an editor cannot even read it. */
function parsed(text: string): readonly unknown[] {
  try {
    return [JSON.parse(text)];
  } catch {
    return [];
  }
}
