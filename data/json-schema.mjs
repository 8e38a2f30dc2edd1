// The JSON Schema of a record, as editors read it.
import { join } from "node:path";
import { speciesJsonSchema } from "./collection.mjs";
import { root } from "./source.mjs";

export const schemaFile = join(root, "data/schemas/species.schema.json");
export const schemaText = `${JSON.stringify(speciesJsonSchema, null, 2)}\n`;
