import { version } from "../../package.json";
import { listOf, oneOf } from "../checks";
import { refusal } from "../errors";
import { frozen } from "../frozen";
import { overlaps } from "./overlaps/overlaps";
import { facts } from "./records/facts";
import { names } from "./records/names";
import { sources } from "./records/sources";
import { statements } from "./records/statements";
import { taxa } from "./records/taxa";
import { traits } from "./records/traits";
import type { Column, Table } from "./table";
import { verdicts } from "./verdicts";

/** Every table by its name: what a row is, what each column holds and in which unit, and how rows are told apart. */
export const tables = /* @__PURE__ */ frozen({
  taxa,
  names,
  traits,
  sources,
  statements,
  facts,
  overlaps,
  verdicts,
});

/** The name of a table. */
export type TableName = keyof typeof tables;

/** The tables that hold the whole catalog. */
const catalogTables: readonly TableName[] = ["taxa", "names", "traits", "sources", "statements", "facts"];

/** A column as Table Schema describes it. */
export interface DataField {
  readonly name: string;
  readonly type: Column["type"];
  readonly description: string;
  /** The term of an open vocabulary that means the same, as a URI. */
  readonly rdfType?: string;
  readonly constraints?: {
    readonly required?: true;
    readonly enum?: readonly string[];
    readonly minimum?: number;
    readonly maximum?: number;
  };
}

/** A table as a Data Package describes it. */
export interface DataResource {
  readonly name: TableName;
  /** Its file. */
  readonly path: string;
  readonly description: string;
  readonly format: "csv";
  readonly mediatype: "text/csv";
  readonly encoding: "utf-8";
  readonly schema: {
    readonly fields: readonly DataField[];
    readonly primaryKey: readonly string[];
    readonly foreignKeys?: readonly {
      readonly fields: readonly string[];
      readonly reference: { readonly resource: TableName; readonly fields: readonly string[] };
    }[];
  };
}

/** The descriptor of a Data Package 2.0. */
export interface DataPackage {
  readonly $schema: "https://datapackage.org/profiles/2.0/datapackage.json";
  readonly name: "vivary";
  readonly title: string;
  readonly description: string;
  /** Of the package that the tables were made with. */
  readonly version: string;
  readonly resources: readonly DataResource[];
}

/**
 * What `datapackage.json` says beside the CSV files of tables: a Data Package 2.0, with the type and the meaning of every
 * column, and the keys by which tables refer to each other.
 *
 * @param included - The tables that are there; else those of the catalog: taxa, names, traits, sources, statements, facts.
 * @throws InvalidInputError for what is no list of tables, without a table, and for one that is named twice.
 *
 * @example
 * ```ts
 * import { dataPackage } from "vivary/tables";
 *
 * dataPackage().resources.map(({ path }) => path)[0]; // => "taxa.csv"
 * ```
 */
export function dataPackage(included: readonly TableName[] = catalogTables): DataPackage {
  const chosen = listOf(included, "tables").map((name) => oneOf(name, Object.keys(tables), "tables"));
  if (chosen.length === 0) throw refusal("tables", "at least one", included, "range");
  if (new Set(chosen).size < chosen.length) throw refusal("tables", "each once", included, "conflict");
  return {
    $schema: "https://datapackage.org/profiles/2.0/datapackage.json",
    name: "vivary",
    title: "Vivary: species of freshwater and brackish aquaria, and what sources say of them",
    description:
      "Figures keep the terms of their sources: cite these. Where commercialUse of a statement is false, its source forbids commercial use; where it is empty, the source does not say.",
    version,
    resources: chosen.map((name) => resourceOf(name, chosen)),
  };
}

function resourceOf(name: TableName, included: readonly TableName[]): DataResource {
  const { about, columns, key, refers }: Table = tables[name];
  const foreignKeys = Object.entries(refers)
    .filter(([, table]) => included.includes(table as TableName))
    .map(([column, table]) => {
      const resource = table as TableName;
      return { fields: [column], reference: { resource, fields: tables[resource].key } };
    });
  return {
    name,
    path: `${name}.csv`,
    description: about,
    format: "csv",
    mediatype: "text/csv",
    encoding: "utf-8",
    schema: {
      fields: Object.entries(columns).map(([column, told]) => fieldOf(column, told)),
      primaryKey: key,
      ...(foreignKeys.length > 0 && { foreignKeys }),
    },
  };
}

function fieldOf(name: string, { type, about, required, words, within = {}, term }: Column): DataField {
  const constraints = {
    ...(required && { required }),
    ...(words && { enum: words }),
    ...(within.min !== undefined && { minimum: within.min }),
    ...(within.max !== undefined && { maximum: within.max }),
  };
  return {
    name,
    type,
    description: about,
    ...(term && { rdfType: term }),
    ...(Object.keys(constraints).length > 0 && { constraints }),
  };
}
