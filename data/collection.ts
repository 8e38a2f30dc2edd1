// The data as one collection, as checks and commands see it.
import { type DataFolder, safeParseSpecies } from "vivary/schema";
import { resolve, type SpeciesProfile, type SpeciesRecord } from "vivary/species";
import { type DataFile, folders, readFolder } from "./files";

/** A well-formed record with its file and the profile it resolves to. */
interface Entry {
  readonly path: string;
  readonly record: SpeciesRecord;
  readonly profile: SpeciesProfile;
}

/** Every file of data, and the records in them that are well formed. */
export interface Collection {
  /** The folder of the project. */
  readonly root: string;
  readonly files: Readonly<Record<DataFolder, readonly DataFile[]>>;
  readonly records: readonly Entry[];
}

export async function readCollection(root: string): Promise<Collection> {
  const [species, sources, moved, legal, standards] = await Promise.all([
    readFolder(root, "species"),
    readFolder(root, "sources"),
    readFolder(root, "moved"),
    readFolder(root, "legal"),
    readFolder(root, "standards"),
  ]);
  return { root, files: { species, sources, moved, legal, standards }, records: species.flatMap(entryOf) };
}

function entryOf({ path, json }: DataFile): readonly Entry[] {
  const parsed = safeParseSpecies(json);
  return parsed.success ? [{ path, record: parsed.record, profile: resolve(parsed.record) }] : [];
}

/** The files of every folder. */
export const allFiles = ({ files }: Collection): readonly DataFile[] =>
  folders.flatMap((folder) => files[folder]);
