import type { Check } from "../../../data/checks";
import { root } from "../../../data/reading/files";
import type { Source } from "../../../src/schema";
import { resolve, type SpeciesRecord, type Statements } from "../../../src/species";
import { leastRecord } from "../../species/records";

type Fields = Statements & Partial<Pick<SpeciesRecord, "taxonomy" | "sources" | "forms">>;

/** What a check finds in one record of the given fields beside the given sources: where and what. */
export async function foundBy(
  { find }: Check,
  fields: Fields,
  sources: readonly Partial<Source>[] = [],
): Promise<readonly string[]> {
  const record: SpeciesRecord = { ...leastRecord, ...fields };
  const files = sources.map((json) => ({
    folder: "sources" as const,
    name: json.id ?? "",
    path: `data/sources/${json.id}.json`,
    text: JSON.stringify(json),
    json,
    faults: [],
  }));
  const slips = await find({
    root,
    files: { species: [], sources: files, moved: [], legal: [], standards: [] },
    problems: [],
    records: [{ path: "data/species/danio-rerio.json", record, profile: resolve(record) }],
  });
  return slips.map(({ file, found }) => `${file}: ${found}`);
}
