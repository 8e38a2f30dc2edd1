import { readdirSync, readFileSync } from "node:fs";

/** The files of a folder of data, as JSON reads them. */
export function filesOf(folder: string): readonly { readonly name: string; readonly json: unknown }[] {
  const directory = new URL(`../../data/${folder}/`, import.meta.url);
  return readdirSync(directory)
    .filter((name) => name.endsWith(".json"))
    .map((name) => ({ name, json: JSON.parse(readFileSync(new URL(name, directory), "utf8")) }));
}
