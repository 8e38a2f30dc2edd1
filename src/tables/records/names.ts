import { frozen } from "../../frozen";
import type { Names } from "../../species";
import type { RowWith } from "../table";
import { dct, dwc, ets } from "../terms";
import { type Described, describedOf } from "./described";

const columns = {
  nameID: { type: "string", about: "Tells the row from all others.", required: true },
  taxonID: { type: "string", about: "The species.", required: true, term: dwc("taxonID") },
  form: {
    type: "string",
    about: "The form bred in captivity that bears the name; empty for the species.",
    term: ets("morphotype"),
  },
  name: { type: "string", about: "The name.", required: true, term: dwc("vernacularName") },
  nameType: {
    type: "string",
    about: "Vernacular, or a scientific name by which it was or still is sold.",
    required: true,
    words: ["vernacular", "synonym"],
  },
  language: {
    type: "string",
    about: "The language of a vernacular name, as BCP 47 writes it.",
    term: dct("language"),
  },
  rank: {
    type: "integer",
    about: "1 for the commonest name of its language; synonyms are counted as the record lists them.",
    required: true,
    within: { min: 1 },
  },
} as const;

/** What species and their forms are called. */
export const names = /* @__PURE__ */ frozen({
  name: "names",
  about: "A name of a species or of a form bred of it, beside the accepted one.",
  columns,
  key: ["nameID"],
  refers: { taxonID: "taxa" },
} as const);

/** A name as a row; `tables.names` says what each cell holds. */
export type NameRow = RowWith<typeof columns>;

/**
 * What the species of records or profiles are called beside their accepted names: vernacular names of species and forms,
 * and synonyms. Of a profile with a form applied, which bears the form's names, those that the species has in the same
 * languages are not known.
 *
 * @throws InvalidInputError for what is no list of records or profiles.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { nameRows } from "vivary/tables";
 *
 * nameRows([danioRerio]).map(({ name, language }) => [language, name])[0]; // => ["en", "zebra danio"]
 * ```
 */
export function nameRows(species: readonly Described[]): readonly NameRow[] {
  return describedOf(species, "species").flatMap(({ id, taxonomy, forms = {}, ...named }) => [
    ...vernacular(id, null, ownNames({ ...named, forms })),
    ...Object.entries(forms).flatMap(([form, { names }]) => vernacular(id, form, names)),
    ...(taxonomy.synonyms ?? []).map((name, index) => ({
      nameID: `${id}/synonym/${index + 1}`,
      taxonID: id,
      form: null,
      name,
      nameType: "synonym",
      language: null,
      rank: index + 1,
    })),
  ]);
}

/** The names of the species itself: with a form applied those in languages in which the form has none. */
function ownNames({ names, form, forms = {} }: Pick<Described, "names" | "form" | "forms">): Names {
  const ofForm = form !== undefined && Object.hasOwn(forms, form) ? forms[form]?.names : undefined;
  return Object.fromEntries(
    Object.entries(names).filter(([language]) => !ofForm || !Object.hasOwn(ofForm, language)),
  );
}

function vernacular(taxonID: string, form: string | null, names: Names): readonly NameRow[] {
  return Object.entries(names).flatMap(([language, list]) =>
    list.map((name, index) => ({
      nameID: [taxonID, form, language, index + 1].filter((part) => part !== null).join("/"),
      taxonID,
      form,
      name,
      nameType: "vernacular",
      language,
      rank: index + 1,
    })),
  );
}
