import { frozen } from "../../frozen";
import { classes } from "../../species";
import { listed, type RowWith } from "../table";
import { dct, dwc } from "../terms";
import { type Described, describedOf } from "./described";

const columns = {
  taxonID: {
    type: "string",
    about: "The accepted name in lower case, words joined by hyphens.",
    required: true,
    term: dwc("taxonID"),
  },
  scientificName: {
    type: "string",
    about: "The accepted name with author and year.",
    required: true,
    term: dwc("scientificName"),
  },
  canonicalName: { type: "string", about: "The accepted name alone.", required: true },
  genus: { type: "string", about: "The first word of the name.", required: true, term: dwc("genus") },
  scientificNameAuthorship: {
    type: "string",
    about: "Author and year.",
    required: true,
    term: dwc("scientificNameAuthorship"),
  },
  family: { type: "string", about: "The family.", required: true, term: dwc("family") },
  order: { type: "string", about: "The order.", required: true, term: dwc("order") },
  kind: {
    type: "string",
    about: "What sort of animal it is.",
    required: true,
    words: Object.keys(classes.kind),
  },
  taxonRank: { type: "string", about: "The rank, always species.", required: true, term: dwc("taxonRank") },
  nomenclaturalCode: {
    type: "string",
    about: "The code that rules the name, always that of zoology.",
    required: true,
    term: dwc("nomenclaturalCode"),
  },
  identifiers: {
    type: "string",
    about: "Its keys in other databases, each as database:key, such as ncbi:38739.",
    term: dct("identifier"),
  },
  taxonRemarks: { type: "string", about: "A remark on the name.", term: dwc("taxonRemarks") },
} as const;

/** The species. */
export const taxa = /* @__PURE__ */ frozen({
  name: "taxa",
  about: "A species.",
  columns,
  key: ["taxonID"],
  refers: {},
} as const);

/** A species as a row; `tables.taxa` says what each cell holds. */
export type TaxonRow = RowWith<typeof columns>;

/**
 * The species of records or profiles, a row each.
 *
 * @throws InvalidInputError for what is no list of records or profiles.
 *
 * @example
 * ```ts
 * import { allSpecies } from "vivary/catalog";
 * import { taxonRows } from "vivary/tables";
 *
 * taxonRows(allSpecies).find(({ taxonID }) => taxonID === "danio-rerio")?.family; // => "Danionidae"
 * ```
 */
export function taxonRows(species: readonly Described[]): readonly TaxonRow[] {
  return describedOf(species, "species").map(({ id, taxonomy, identifiers = {} }) => ({
    taxonID: id,
    scientificName: `${taxonomy.name} ${taxonomy.authority}`,
    canonicalName: taxonomy.name,
    genus: taxonomy.name.replace(/ .*/, ""),
    scientificNameAuthorship: taxonomy.authority,
    family: taxonomy.family,
    order: taxonomy.order,
    kind: taxonomy.kind,
    taxonRank: "species",
    nomenclaturalCode: "ICZN",
    identifiers: listed(Object.entries(identifiers).map(([database, key]) => `${database}:${key}`)),
    taxonRemarks: taxonomy.note ?? null,
  }));
}
