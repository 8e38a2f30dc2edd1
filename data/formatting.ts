// Brings the files of data into their form.
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { jsonSchemas } from "vivary/schema";
import { readFolder } from "./files";
import { formatRecord } from "./format-record";
import { readJson, unmarked } from "./json";
import { schemaFiles } from "./json-schema";

/** A record that does not read as it should. */
export interface Unformatted {
  readonly path: string;
  readonly file: string;
  readonly formatted: string;
}

/** The records that do not read as they should; a file with a fault would lose something and is left alone. */
export async function unformatted(root: string): Promise<readonly Unformatted[]> {
  const files = await readFolder(root, "species");
  return files.flatMap(({ name, path, text }) => {
    const { json, faults } = readJson(unmarked(text));
    if (faults.length > 0) return [];
    const formatted = formatRecord(json, jsonSchemas.species);
    return text === formatted ? [] : [{ path, file: join(root, "data/species", `${name}.json`), formatted }];
  });
}

/** Writes those records and the schemas; gives the records. */
export async function format(root: string): Promise<readonly Unformatted[]> {
  const differing = await unformatted(root);
  await Promise.all([
    ...differing.map(({ file, formatted }) => writeFile(file, formatted)),
    ...schemaFiles.map(({ path, text }) => writeFile(join(root, path), text)),
  ]);
  return differing;
}
