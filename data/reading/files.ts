// Reads the JSON files of data.
import { readdir, readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import type { DataFolder } from "vivary/schema";
import { type Fault, readJson } from "./json";

/** The folder of the project. */
export const root = fileURLToPath(new URL("../..", import.meta.url));

/** The folders of JSON files. */
export const folders = [
  "species",
  "sources",
  "moved",
  "legal",
  "standards",
] as const satisfies readonly DataFolder[];

/** A file of data. */
export interface DataFile {
  readonly folder: DataFolder;
  /** Its name without `.json`. */
  readonly name: string;
  /** As a contributor knows it: `data/species/danio-rerio.json`. */
  readonly path: string;
  readonly text: string;
  /** What it holds; undefined where nobody can tell. */
  readonly json: unknown;
  /** What is wrong with it as JSON. */
  readonly faults: readonly Fault[];
}

/** The JSON files of a folder, by name. */
export async function readFolder(root: string, folder: DataFolder): Promise<readonly DataFile[]> {
  const names = (await readdir(join(root, "data", folder))).filter((name) => name.endsWith(".json")).sort();
  return Promise.all(
    names.map(async (file) => {
      const text = await readFile(join(root, "data", folder, file), "utf8");
      return {
        folder,
        name: basename(file, ".json"),
        path: `data/${folder}/${file}`,
        text,
        ...readJson(text),
      };
    }),
  );
}
