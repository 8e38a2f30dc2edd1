// The tables of the whole catalog as files of a Data Package.
import { createHash } from "node:crypto";
import { allSpecies } from "vivary/catalog";
import { allRecords, dataVersion, recordById, sources } from "vivary/evidence";
import { resolve } from "vivary/species";
import {
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
export function releasedRows(compared = allSpecies): ReleasedRows {
  return {
    taxa: taxonRows(allSpecies),
    names: nameRows(allSpecies),
    traits: traitRows(),
    sources: sourceRows(sources),
    statements: statementRows(allRecords),
    // Resolved anew, since profiles of the catalog do not say who said a fact.
    facts: factRows(allRecords.map((record) => resolve(record))),
    overlaps: overlapRows(compared, {
      axes: ["water.temperature", "water.pH", "water.generalHardness", "water.salinity"],
      measures: ["jaccard"],
      recordOf: recordById,
    }),
  };
}

/** The terms of code and figures, which lie beside the tables. */
const licenses = [
  {
    title:
      "Figures keep the terms of their sources, some of which forbid commercial use; what contributors wrote is MIT.",
    path: "NOTICE.md",
  },
];

/** The files of the package. */
export function dataPackageFiles(rows: ReleasedRows): Files {
  const named = Object.entries(rows) as readonly (readonly [TableName, readonly Row[]])[];
  const csv: Files = Object.fromEntries(
    named.map(([name, held]) => [`${name}.csv`, toCsv(held, Object.keys(tables[name].columns))]),
  );
  const described = dataPackage(named.map(([name]) => name));
  const descriptor = {
    ...described,
    dataVersion,
    resources: described.resources.map((resource) => ({ ...resource, ...sizeOf(csv[resource.path] ?? "") })),
    licenses,
    sources: rows.sources.map(told),
  };
  return { "datapackage.json": `${JSON.stringify(descriptor, null, 2)}\n`, ...csv };
}

/** By which whoever has a file knows that it is whole. */
const sizeOf = (text: string) => ({
  bytes: Buffer.byteLength(text),
  hash: `sha256:${createHash("sha256").update(text).digest("hex")}`,
});

/** A source as a descriptor names it. */
function told({ title, year, doi, url }: ReleasedRows["sources"][number]) {
  const path = doi === null ? url : `https://doi.org/${encodeURI(doi)}`;
  return { title: year === null ? title : `${title} (${year})`, ...(path !== null && { path }) };
}
