import { objectOf } from "../../checks";
import {
  type CitableSource,
  factAt,
  resolve,
  type SourceReference,
  type SpeciesRecord,
  statementsOf,
  type TraitPath,
  traitPaths,
} from "../../species";
import { sources } from "./sources";

/** A source as one record cites it, with the place in it and the reference. */
export interface Citation extends SourceReference {
  /** The key by which statements of the record name it, and the `said` of a fact. */
  readonly by: string;
  /** Whether a value that counts comes from it, of the species or of one of its forms; else it stands beside or is set aside. */
  readonly used: boolean;
  /** The reference in CSL-JSON; absent where the record cites what is none of {@link sources}. */
  readonly source?: CitableSource | undefined;
}

/**
 * The sources of a trait, or of everything that a record and its forms state: one row for each place in a source, in the
 * order of the record's sources. Common practice and what a curator blended have none.
 *
 * @param record - A record as {@link recordById} gives it.
 * @param path - The trait; all of them if absent.
 * @throws InvalidInputError for what is no record, and where there is no such trait.
 *
 * @example
 * ```ts
 * import { citationsOf, recordById } from "vivary/evidence";
 *
 * const record = recordById("puntigrus-tetrazona");
 * const cited = record ? citationsOf(record, "water.pH") : [];
 * cited.map(({ by, used }) => [by, used]); // => [["fishbase", true], ["nbfgr", false]]
 * cited[0]?.source?.title; // => "FishBase"
 * ```
 */
export function citationsOf(record: SpeciesRecord, path?: TraitPath): readonly Citation[] {
  const profile = resolve(record);
  const paths = path === undefined ? traitPaths : [path];
  const stated = [record, ...Object.values(record.forms ?? {})].flatMap((of) =>
    paths.flatMap((trait) => statementsOf(of, trait)),
  );
  const said = new Set(
    [profile, ...Object.values(profile.forms ?? {})].flatMap((of) =>
      paths.flatMap((trait) => factAt(of, trait)?.said ?? []),
    ),
  );
  return Object.entries(objectOf(record.sources, "sources")).flatMap(([by, reference]) => {
    const ats = stated.filter((statement) => statement.by === by).map(({ at = reference.at }) => at);
    const places = ats.length === 0 && said.has(by) ? [reference.at] : [...new Set(ats)];
    return places.map((at) => citation(by, { ...reference, at }, said.has(by)));
  });
}

function citation(by: string, { at, ...reference }: SourceReference, used: boolean): Citation {
  const source = sources[reference.cite];
  return { by, ...reference, ...(at !== undefined && { at }), used, ...(source && { source }) };
}
