// Brings the files of data into their form.
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { jsonSchemas } from "vivary/schema";
import { type DataFile, readFolder } from "../reading/files";
import { readJson, unmarked } from "../reading/json";
import { formatRecord } from "./format-record";
import { schemaFiles } from "./json-schema";

/** A record that does not read as it should. */
export interface Unformatted {
  readonly path: string;
  readonly formatted: string;
}

/** The records that do not read as they should. */
export async function unformatted(root: string): Promise<readonly Unformatted[]> {
  return unformattedOf(await readFolder(root, "species"));
}

/** The records that cannot be read as they stand, which formatting leaves alone. */
export async function unreadable(root: string): Promise<readonly string[]> {
  const files = await readFolder(root, "species");
  return files.filter((file) => jsonOf(file).faults.length > 0).map(({ path }) => path);
}

/** Those of some records; a file with a fault would lose something and is left alone. */
export function unformattedOf(files: readonly DataFile[]): readonly Unformatted[] {
  return files.flatMap((file) => {
    const { path, text } = file;
    const { json, faults } = jsonOf(file);
    if (faults.length > 0) return [];
    const formatted = formatRecord(json, jsonSchemas.species);
    return text === formatted ? [] : [{ path, formatted }];
  });
}

/** What a file holds, whatever invisible mark stands at its beginning. */
const jsonOf = (file: DataFile) => (unmarked(file.text) === file.text ? file : readJson(unmarked(file.text)));

/** Writes those records and the schemas; gives the records. */
export async function format(root: string): Promise<readonly Unformatted[]> {
  const differing = await unformatted(root);
  await Promise.all([
    ...differing.map(({ path, formatted }) => writeFile(join(root, path), formatted)),
    ...schemaFiles.map(({ path, text }) => writeFile(join(root, path), text)),
  ]);
  return differing;
}
