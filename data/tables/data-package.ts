// The tables of the whole catalog as files of a Data Package.
import { allSpecies } from "vivary/catalog";
import { allRecords, recordById } from "vivary/evidence";
import {
  type CslSource,
  dataPackage,
  factRows,
  nameRows,
  overlapRows,
  type Row,
  sourceRows,
  statementRows,
  type TableName,
  tables,
  taxonRows,
  toCsv,
  traitRows,
} from "vivary/tables";
import { readFolder, root } from "../files";

/** Files by name. */
export type Files = Readonly<Record<string, string>>;

/** The rows of each table that is released. */
export interface ReleasedRows {
  readonly taxa: ReturnType<typeof taxonRows>;
  readonly names: ReturnType<typeof nameRows>;
  readonly traits: ReturnType<typeof traitRows>;
  readonly sources: ReturnType<typeof sourceRows>;
  readonly statements: ReturnType<typeof statementRows>;
  readonly facts: ReturnType<typeof factRows>;
  readonly overlaps: ReturnType<typeof overlapRows>;
}

/**
 * The rows of the whole catalog; overlaps by the kept spans of water, of which one measure tells what all do.
 *
 * @param compared - The species whose overlaps are told; all of them if absent.
 */
export async function releasedRows(compared = allSpecies): Promise<ReleasedRows> {
  const sources = (await readFolder(root, "sources")).map(({ json }) => json as CslSource);
  return {
    taxa: taxonRows(allSpecies),
    names: nameRows(allSpecies),
    traits: traitRows(),
    sources: sourceRows(Object.fromEntries(sources.map((source) => [source.id, source]))),
    statements: statementRows(allRecords),
    facts: factRows(allSpecies),
    overlaps: overlapRows(compared, {
      axes: ["water.temperature", "water.pH", "water.generalHardness", "water.salinity"],
      measures: ["jaccard"],
      recordOf: recordById,
    }),
  };
}

/** The files of the package. */
export function dataPackageFiles(rows: ReleasedRows): Files {
  const named = Object.entries(rows) as readonly (readonly [TableName, readonly Row[]])[];
  const csv = named.map(([name, held]) => [`${name}.csv`, toCsv(held, Object.keys(tables[name].columns))]);
  const descriptor = dataPackage(named.map(([name]) => name));
  return { "datapackage.json": `${JSON.stringify(descriptor, null, 2)}\n`, ...Object.fromEntries(csv) };
}
