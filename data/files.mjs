// Reads the JSON files of data.
import { readdir, readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import { root } from "./source.mjs";

/** The JSON files of a folder of data by name, each as `{ name, path, text, json }`. */
export async function readFolder(folder) {
  const directory = join(root, "data", folder);
  const names = (await readdir(directory)).filter((name) => name.endsWith(".json")).sort();
  return Promise.all(
    names.map(async (file) => {
      const text = await readFile(join(directory, file), "utf8");
      const path = `data/${folder}/${file}`;
      return { name: basename(file, ".json"), path, text, json: parse(text, path) };
    }),
  );
}

function parse(text, path) {
  try {
    return JSON.parse(text);
  } catch (error) {
    throw new Error(`${path}: ${error.message}`);
  }
}
