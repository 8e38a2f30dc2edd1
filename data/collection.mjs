// The data as one collection, as checks and commands see it.
import { readFolder } from "./files.mjs";
import { importSource } from "./source.mjs";

const schema = await importSource("schema/index.ts");
const { resolve } = await importSource("species/resolve.ts");

export const { describeProblem, safeParseSpecies, speciesJsonSchema } = schema;

/** The files of data; of every file that holds a record also the record and the profile it resolves to. */
export async function readCollection() {
  const [files, sources, moved] = await Promise.all(["species", "sources", "moved"].map(readFolder));
  const records = files.flatMap(({ path, json }) => {
    const parsed = safeParseSpecies(json);
    return parsed.success ? [{ path, record: parsed.record, profile: resolve(parsed.record) }] : [];
  });
  return { files, sources, moved, records };
}
