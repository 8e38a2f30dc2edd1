// Files of data that nothing reads.
import { readdir } from "node:fs/promises";
import { join, relative, sep } from "node:path";
import { basename, dirname } from "node:path/posix";
import { folders } from "./files";

/** The folders whose files are read, as a contributor knows them. */
const read: readonly string[] = folders.map((folder) => `data/${folder}`);

/**
 * The files in folders of data that are no `.json`, or lie deeper, and JSON files that lie elsewhere in `data`; hidden ones
 * are nobody's.
 */
export async function strayFiles(root: string): Promise<readonly string[]> {
  const entries = await readdir(join(root, "data"), { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join("/"))
    .filter(isStray)
    .sort();
}

function isStray(path: string): boolean {
  const name = basename(path);
  if (name.startsWith(".")) return false;
  if (read.includes(dirname(path))) return !name.endsWith(".json");
  const isWithin = read.some((folder) => path.startsWith(`${folder}/`));
  return isWithin || (/\.json$/i.test(name) && dirname(path) !== "data/schemas");
}
