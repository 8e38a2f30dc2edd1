// What editors read of the folders of data: the JSON Schemas, and a snippet of each trait.
import { jsonSchemas } from "vivary/schema";
import { splitPath, traitPaths, traitTable } from "vivary/species";
import { schemaAt } from "../reading/schema-at";
import { snippetOf } from "./snippet";

const asText = (value: unknown) => `${JSON.stringify(value, null, 2)}\n`;

const schemas = Object.entries(jsonSchemas).map(([folder, schema]) => ({
  path: `data/schemas/${folder}.schema.json`,
  text: asText(schema),
}));

/** The lines of each trait, to write over. */
const snippets = Object.fromEntries(
  traitPaths.map((path) => {
    const [section, name] = splitPath(path);
    const [example] = schemaAt("species", [section, name, 0])?.examples ?? [];
    const body = `"${name}": [\n  ${snippetOf(example)}\n]`;
    const { label, about } = traitTable[path];
    return [label, { scope: "json", prefix: path, description: about, body }];
  }),
);

/** Each of them as a file of the project. */
export const schemaFiles = [...schemas, { path: ".vscode/traits.code-snippets", text: asText(snippets) }];
