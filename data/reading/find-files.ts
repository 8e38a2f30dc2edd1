// Finds the file that a name means.
import { basename, dirname } from "node:path/posix";
import type { Collection } from "./collection";
import { allFiles } from "./collection";
import { fieldOf, fieldsOf } from "./fields";
import type { DataFile } from "./files";
import { nearest } from "./spelling";

/** The files of an id, a path, or a name: scientific, a synonym, vernacular, of a form, or one that moved. */
export function filesNamed(collection: Collection, asked: string): readonly DataFile[] {
  const files = allFiles(collection);
  const path = asked.trim().replaceAll("\\", "/");
  const name = basename(path, ".json");
  const id = name.toLowerCase().replaceAll(" ", "-");
  const inFolder = files.filter((file) => file.name === id && dirname(path).endsWith(file.folder));
  if (inFolder.length > 0) return inFolder;
  const byId = files.filter((file) => file.name === id && file.folder !== "moved");
  if (byId.length > 0) return byId;
  const known = name.toLowerCase();
  const byName = collection.files.species.filter((file) =>
    namesIn(file.json).some((other) => other.toLowerCase() === known),
  );
  if (byName.length > 0) return byName;
  const to = fieldOf(collection.files.moved.find((file) => file.name === id)?.json, "to");
  return collection.files.species.filter((file) => file.name === to);
}

/** The file of data that a misspelt name may mean. */
export function nearestTo(collection: Collection, asked: string): string | undefined {
  const names = collection.files.species.flatMap(({ name, json }) => [name, ...namesIn(json)]);
  const files = allFiles(collection).map(({ name }) => name);
  return nearest(basename(asked.trim(), ".json"), [...names, ...files]);
}

/** All names that a record has, whatever is wrong with it. */
function namesIn(json: unknown): readonly string[] {
  const taxonomy = fieldOf(json, "taxonomy");
  const forms = fieldsOf(fieldOf(json, "forms")).map(([, form]) => form);
  const vernacular = [json, ...forms].flatMap((holder) =>
    fieldsOf(fieldOf(holder, "names")).map(([, list]) => list),
  );
  const lists = [[fieldOf(taxonomy, "name")], fieldOf(taxonomy, "synonyms"), ...vernacular];
  return lists
    .flatMap((list) => (Array.isArray(list) ? list : []))
    .filter((name) => typeof name === "string");
}
