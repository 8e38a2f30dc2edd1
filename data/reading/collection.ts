// The data as one collection, as checks and commands see it.
import {
  type DataFolder,
  type ParsedSpecies,
  type Problem,
  problemsIn,
  type Source,
  safeParseSpecies,
} from "vivary/schema";
import { type RecordSources, resolve, type SpeciesProfile, type SpeciesRecord } from "vivary/species";
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
  /** What is wrong with the files that hold something. */
  readonly problems: readonly FileProblems[];
}

/** What is wrong with a file, in its shape and within itself. */
interface FileProblems {
  readonly file: DataFile;
  readonly problems: readonly Problem[];
}

export async function readCollection(root: string): Promise<Collection> {
  const [species, sources, moved, legal, standards] = await Promise.all([
    readFolder(root, "species"),
    readFolder(root, "sources"),
    readFolder(root, "moved"),
    readFolder(root, "legal"),
    readFolder(root, "standards"),
  ]);
  return collectionOf(root, { species, sources, moved, legal, standards });
}

/** The collection of some files. */
export function collectionOf(root: string, files: Collection["files"]): Collection {
  const { species, sources, moved, legal, standards } = files;
  const forbidding = new Set(sources.filter(forbidsCommerce).map(({ name }) => name));
  const parsed = species
    .filter(({ json }) => json !== undefined)
    .map((file) => ({ file, parsed: safeParseSpecies(file.json) }));
  const others = [...sources, ...moved, ...legal, ...standards].filter(({ json }) => json !== undefined);
  return {
    root,
    files,
    records: parsed.flatMap((one) => entryOf(one.file, one.parsed, forbidding)),
    problems: [
      ...parsed.map((one) => ({ file: one.file, problems: one.parsed.success ? [] : one.parsed.problems })),
      ...others.map((file) => ({ file, problems: problemsIn(file.folder, file.json) })),
    ].filter(({ problems }) => problems.length > 0),
  };
}

function entryOf(
  { path }: DataFile,
  parsed: ParsedSpecies,
  forbidding: ReadonlySet<string>,
): readonly Entry[] {
  if (!parsed.success) return [];
  const record = { ...parsed.record, sources: licensed(parsed.record.sources, forbidding) };
  return [{ path, record, profile: resolve(record) }];
}

/** Sources of a record, each with whether no licence is known that forbids commercial use. */
function licensed(sources: RecordSources, forbidding: ReadonlySet<string>): RecordSources {
  const entries = Object.entries(sources).map(([key, source]) => [
    key,
    { ...source, commercial: !forbidding.has(source.cite) && !forbidding.has(source.root ?? source.cite) },
  ]);
  return Object.fromEntries(entries);
}

const forbidsCommerce = ({ json }: DataFile) => (json as Source | undefined)?.custom?.commercial === false;

/** The files of every folder. */
export const allFiles = ({ files }: Collection): readonly DataFile[] =>
  folders.flatMap((folder) => files[folder]);
