// The JSON Schemas of the folders of data, as editors read them.
import { speciesJsonSchema } from "vivary/schema";

/** The schema of each folder that has one. */
export const jsonSchemas = { species: speciesJsonSchema };

/** Each schema as a file of data. */
export const schemaFiles = Object.entries(jsonSchemas).map(([folder, schema]) => ({
  file: `${folder}.schema.json`,
  text: `${JSON.stringify(schema, null, 2)}\n`,
}));
