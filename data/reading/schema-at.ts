// What the JSON Schemas say of what stands at a path.
import { type DataFolder, jsonSchemas } from "vivary/schema";
import { pointedAt } from "./pointer";

/** What a JSON Schema says of a place in a file. */
export interface Schema {
  readonly description?: string;
  readonly examples?: readonly unknown[];
  /** Classes, each with its sentence. */
  readonly oneOf?: readonly { readonly const?: string }[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly additionalProperties?: Schema | boolean;
  readonly items?: Schema;
  readonly anyOf?: readonly Schema[];
  readonly $ref?: string;
}

type Path = readonly (string | number)[];

/** The schema of a place; undefined where no such place may be. */
export const schemaAt = (folder: DataFolder, path: Path): Schema | undefined =>
  path.reduce<Schema | undefined>(
    (schema, key) => schema && referred(folder, within(schema, key)),
    jsonSchemas[folder],
  );

/** The schema that a reference stands for. */
const referred = (folder: DataFolder, schema: Schema | undefined): Schema | undefined =>
  schema?.$ref ? pointedAt<Schema>(jsonSchemas[folder], schema.$ref) : schema;

function within(schema: Schema, key: string | number): Schema | undefined {
  const { properties = {}, additionalProperties, items, anyOf = [] } = schema;
  if (typeof key === "number" && items) return items;
  if (Object.hasOwn(properties, key)) return properties[key];
  if (typeof additionalProperties === "object") return additionalProperties;
  return anyOf.map((one) => within(one, key)).find((found) => found);
}

/** The fields that an object may have there; none where the record chooses them itself. */
export function fieldNamesAt(folder: DataFolder, path: Path): readonly string[] {
  const schema = schemaAt(folder, path);
  const choices = schema ? [schema, ...(schema.anyOf ?? [])] : [];
  return choices.flatMap(({ properties = {} }) => Object.keys(properties));
}

/** What may stand at a path, by an example: of the field itself, else of the innermost thing around it. */
export function exampleAt(folder: DataFolder, path: Path): string | undefined {
  const ends = [...path.keys()].map((index) => path.length - index);
  const held = ends.map((end) => exampleOf(schemaAt(folder, path.slice(0, end))));
  const nearest = held.find((example) => example !== undefined);
  const [word] = schemaAt(folder, path)?.oneOf ?? [];
  if (nearest === undefined) return word?.const && `${spaced(path.at(-1))}: ${spaced(word.const)}`;
  return spaced(nearest);
}

/** An example of what a schema describes; of a list, one with the example of an entry. */
function exampleOf(schema: Schema | undefined): unknown {
  const [ofEntry] = schema?.items?.examples ?? [];
  return schema?.examples?.[0] ?? (ofEntry === undefined ? undefined : [ofEntry]);
}

/** JSON on one line as records are written. */
export function spaced(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(spaced).join(", ")}]`;
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const fields = Object.entries(value).map(([key, held]) => `${JSON.stringify(key)}: ${spaced(held)}`);
  return `{ ${fields.join(", ")} }`;
}
