// The JSON Schemas of the folders of data, as editors read them.
import { jsonSchemas } from "vivary/schema";

/** Each schema as a file of the project. */
export const schemaFiles = Object.entries(jsonSchemas).map(([folder, schema]) => ({
  path: `data/schemas/${folder}.schema.json`,
  text: `${JSON.stringify(schema, null, 2)}\n`,
}));
