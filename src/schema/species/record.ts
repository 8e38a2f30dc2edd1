import * as z from "zod";
import { frozenWhenRead } from "../../made-once";
import { classes, type Section, type SpeciesRecord, type TraitPath, traitTable } from "../../species";
import {
  key,
  keyedUpTo,
  keyLike,
  listUpTo,
  name,
  note,
  place,
  schemaAddress,
  slug,
  speciesId,
} from "../bounded";
import { heldTo } from "../held-to";
import { rulesOfList } from "./editor-rules";
import { reserved } from "./reserved";
import { sectionWords } from "./section-words";
import { explainTrait, type StatementSchema, statementSchema } from "./statement";
import { values } from "./values";
import { oneOf } from "./words";

type Values = typeof values;

/** A section's traits, each a list of statements. */
type SectionSchema<S extends Section> = z.ZodOptional<
  z.ZodObject<
    {
      [Name in keyof Values[S] & string]: z.ZodOptional<
        z.ZodArray<StatementSchema<`${S}.${Name}` & TraitPath, Extract<Values[S][Name], z.ZodType>>>
      >;
    },
    z.core.$strict
  >
>;

/** The sections with their traits; all may be absent. */
const sections = Object.fromEntries(
  Object.entries(values).map(([section, traits]) => [
    section,
    z
      .strictObject(traitFields(section, traits))
      .optional()
      .describe(sectionWords[section as Section]),
  ]),
) as unknown as { [S in Section]: SectionSchema<S> };

/** The traits of a section, each made when a record is first checked: to make them takes longer than to check a few. */
function traitFields(section: string, traits: Readonly<Record<string, z.ZodType>>) {
  const fields = Object.entries(traits).map(([name, value]) => {
    const path = `${section}.${name}` as TraitPath;
    return [name, () => statementsSchema(path, value)] as const;
  });
  return frozenWhenRead<Record<string, z.ZodType>>({}, fields);
}

function statementsSchema(path: TraitPath, value: z.ZodType) {
  const statement = z.lazy(() => statementSchema(path, value));
  const statements = listUpTo(500, statement).optional();
  const description = explainTrait(traitTable[path]);
  return statements.meta({ description, ...rulesOfList(path, value) });
}

const language = keyLike(/^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/, "a language tag such as en or pt-BR");
const names = keyedUpTo(200, language, listUpTo(60, name)).meta({
  description: "Vernacular names by language (BCP 47), the commonest first.",
  examples: [{ en: ["zebra danio", "zebrafish"] }],
});

/**
 * A scientific name, also of a form or an open one (`cf.`, `sp. 3`, `sp. 'Odessa'`); and behind it whether it was that of
 * another species.
 */
const synonym =
  /^[A-Z][a-z]+ (?:sp\. (?:\d+|'[A-Z][a-z]+')|(?:(?:cf|aff)\. )?[a-z-]+(?: (?:(?:f|var|subsp)\. )?[a-z-]+)?)(?: \(misapplied\))?$/;

const database = keyLike(/^[a-z][A-Za-z]*$/, "the name of a database in camel case");
const sourceKey = keyLike(/^[a-z][a-z0-9-]*$/, "lower-case letters, digits and hyphens").meta({
  not: { enum: reserved },
});

const sourceFields = z.strictObject({
  cite: key.describe("The name of a file in data/sources, without .json."),
  at: place.optional().describe("Page, row or address within the source."),
  memory: z.literal(true).optional().describe("The values were recalled; the source was not read."),
  observed: z.literal(true).optional().describe("The source is a keeper's signed observation."),
  under: name.optional().describe("The synonym under which the source records this species."),
  of: name
    .optional()
    .describe("The other species, or the genus, that its figures are of: they stand in for this one."),
  root: key.optional().describe("The source this one copies from."),
  commercial: z
    .boolean()
    .optional()
    .describe("Whether its licence leaves commercial use free. Set from data/sources, not by hand."),
});
const source = sourceFields.meta({
  examples: [{ cite: "yanar-2019", at: "table 2" }],
  anyOf: [{ required: ["at"] }, { required: ["memory"] }, { required: ["observed"] }],
});

/** What a form may state: the fields of its sections are those of the species. */
export const formSchema = z.strictObject({
  names,
  once: listUpTo(20, slug)
    .optional()
    .describe("Ids it once bore: saved plans that name it so still find it."),
  ...sections,
});

/** One file of `data/species`. */
export const recordSchema = heldTo<SpeciesRecord & { readonly $schema?: string | undefined }>()(
  z.strictObject({
    $schema: schemaAddress,
    id: speciesId.describe("The accepted name in lower case, words joined by hyphens."),
    taxonomy: z
      .strictObject({
        name: keyLike(/^[A-Z][a-z]+( [a-z-]+)+$/, "a scientific name such as Danio rerio").meta({
          description: "The accepted scientific name.",
          examples: ["Danio rerio"],
        }),
        authority: name
          .regex(/^(\(.+, \d{4}\)|[^(].*, \d{4})$/, "author and year, such as Hora, 1928 or (Hamilton, 1822)")
          .meta({
            description: "Who described it, and when; in brackets where it was under another genus.",
            examples: ["Hora, 1928", "(Hamilton, 1822)"],
          }),
        family: name
          .regex(/^[A-Z][a-z]+idae$/, "a family such as Danionidae")
          .meta({ description: "The family, in Latin.", examples: ["Danionidae"] }),
        order: name
          .regex(/^[A-Z][a-z]+$/, "an order such as Cypriniformes")
          .meta({ description: "The order, in Latin.", examples: ["Cypriniformes"] }),
        kind: oneOf(classes.kind, "What sort of animal it is."),
        synonyms: listUpTo(200, name.regex(synonym, "a scientific name such as Brachydanio rerio"))
          .optional()
          .meta({
            description: "Names by which it was known before, or which are spelt otherwise.",
            examples: [["Brachydanio rerio", "Otocinclus affinis (misapplied)"]],
          }),
        note: note.optional().describe("What a reader should know of its name."),
      })
      .describe("What it is called in science, and where it stands."),
    names,
    identifiers: keyedUpTo(60, database, keyLike(/^[A-Za-z0-9._-]+$/, "a number or key, not an address"))
      .optional()
      .meta({ description: "Its number in databases.", examples: [{ ncbi: "7955", fishbase: "4653" }] }),
    sources: keyedUpTo(500, sourceKey, source).describe("The sources of its statements, by a key each."),
    ...sections,
    forms: keyedUpTo(40, slug, formSchema)
      .optional()
      .meta({
        description: "Forms that were bred, by an id each, with what differs from the species.",
        examples: [{ "long-fin": { names: { en: ["long-fin zebra danio"] } } }],
      }),
  }),
);
