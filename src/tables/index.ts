/**
 * Records, overlaps and verdicts as tables: plain rows with numbers apart from words, CSV, and the description of a Data
 * Package with keys. For scripts in any language, databases and archives.
 *
 * @packageDocumentation
 */
export { InvalidInputError } from "../errors";
export {
  type DataField,
  type DataPackage,
  type DataResource,
  dataPackage,
  type TableName,
  tables,
} from "./data-package";
export type { OverlapMeasure } from "./overlaps/measures";
export { type OverlapOptions, type OverlapRow, overlapRows } from "./overlaps/overlaps";
export type { Described } from "./records/described";
export { type FactRow, factRows } from "./records/facts";
export { type NameRow, nameRows } from "./records/names";
export { type CslSource, type SourceRow, sourceRows } from "./records/sources";
export { type StatementRow, statementRows } from "./records/statements";
export { type TaxonRow, taxonRows } from "./records/taxa";
export { type TraitRow, traitRows } from "./records/traits";
export type { Column, ColumnType, Row, RowWith, Table } from "./table";
export { toCsv } from "./to-csv";
export { type VerdictRow, verdictRows } from "./verdicts";
