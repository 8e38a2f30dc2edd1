import { readFile } from "node:fs/promises";
import { schemaFile, schemaText } from "../json-schema.mjs";

export const name = "The JSON Schema is current";

export async function find() {
  const written = await readFile(schemaFile, "utf8").catch(() => "");
  if (written === schemaText) return [];
  return [
    {
      where: "data/species.schema.json",
      found: "is stale",
      expected: "the schema of src/schema",
      mend: "npm run format",
    },
  ];
}
