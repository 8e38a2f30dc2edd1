// The species and what sources say of them as a Darwin Core Archive: taxa at the core, measurements and vernacular names
// beside them. Forms bred in captivity have no place there and are left out.
import { toCsv } from "vivary/tables";
import type { Files, ReleasedRows } from "./data-package";
import { type ArchiveFile, metaXml } from "./meta-xml";

const dwc = (name: string) => `http://rs.tdwg.org/dwc/terms/${name}`;
const dct = (name: string) => `http://purl.org/dc/terms/${name}`;
const gbif = (name: string) => `http://rs.gbif.org/terms/1.0/${name}`;

/** The files of the archive. */
export function darwinCoreFiles(rows: ReleasedRows): Files {
  const core = taxonFile(rows);
  const extensions = [measurementFile(rows), vernacularFile(rows)];
  const files = [core, ...extensions].map(({ path, terms, rows: held }) => [
    path,
    toCsv(held, ["taxonID", ...Object.keys(terms)]),
  ]);
  return { "meta.xml": metaXml(core, extensions), ...Object.fromEntries(files) };
}

const dwcTerms = (...names: readonly string[]) => Object.fromEntries(names.map((name) => [name, dwc(name)]));

/** Accepted names, and each synonym as a taxon of its own that points to the accepted one. */
function taxonFile({ taxa, names }: ReleasedRows): ArchiveFile {
  const accepted = taxa.map((taxon) => ({
    taxonID: taxon.taxonID,
    acceptedNameUsageID: taxon.taxonID,
    scientificName: taxon.scientificName,
    scientificNameAuthorship: taxon.scientificNameAuthorship,
    kingdom: "Animalia",
    order: taxon.order,
    family: taxon.family,
    genus: taxon.genus,
    taxonRank: taxon.taxonRank,
    taxonomicStatus: "accepted",
    nomenclaturalCode: taxon.nomenclaturalCode,
    taxonRemarks: taxon.taxonRemarks,
  }));
  const synonyms = names
    .filter(({ nameType }) => nameType === "synonym")
    .map(({ nameID, taxonID, name }) => {
      const scientificName = name.replace(/ \(misapplied\)$/, "");
      return {
        taxonID: nameID,
        acceptedNameUsageID: taxonID,
        scientificName,
        kingdom: "Animalia",
        taxonRank: rankOf(scientificName),
        taxonomicStatus: scientificName === name ? "synonym" : "misapplied",
        nomenclaturalCode: "ICZN",
      };
    });
  const { taxonID, ...terms } = dwcTerms(...Object.keys(accepted[0] ?? {}));
  return { path: "taxon.csv", rowType: dwc("Taxon"), terms, rows: [...accepted, ...synonyms] };
}

/** The rank that a name has by its form: two words of a species, three of a subspecies; none of an open name with a sign. */
function rankOf(name: string): "species" | "subspecies" | null {
  if (/^[A-Z][a-z]+ [a-z-]+$/.test(name)) return "species";
  return /^[A-Z][a-z]+ [a-z-]+ [a-z-]+$/.test(name) ? "subspecies" : null;
}

/** Copies of another statement, and what its record does not count. */
const leftOut = ["repeats", "set-aside"];

/** What sources say of the species and is not left out. A span is two rows under one parent, since Darwin Core has no spans. */
function measurementFile({ statements, traits, sources }: ReleasedRows): ArchiveFile {
  const traitOf = new Map(traits.map((trait) => [trait.trait, trait]));
  const authorsOf = new Map(sources.map(({ sourceID, authors }) => [sourceID, authors]));
  const counting = statements.filter(({ counts, form }) => form === null && !leftOut.includes(counts));
  const rows = counting.flatMap((statement) => {
    const trait = traitOf.get(statement.trait);
    return valuesOf(statement).map(({ end, value }) => ({
      taxonID: statement.taxonID,
      measurementID: [statement.statementID, statement.part, end].filter(Boolean).join("/"),
      parentMeasurementID: statement.statementID,
      measurementType: typeOf(statement, trait?.label ?? statement.trait, end),
      measurementValue: String(value),
      measurementUnit: statement.unit === trait?.unit ? trait.ucum : null,
      measurementDeterminedBy:
        (statement.sourceID && authorsOf.get(statement.sourceID)?.replaceAll("; ", " | ")) ?? null,
      measurementMethod: methodOf(statement),
      measurementRemarks: statement.remarks,
    }));
  });
  const terms = dwcTerms(
    "measurementID",
    "parentMeasurementID",
    "measurementType",
    "measurementValue",
    "measurementUnit",
    "measurementDeterminedBy",
    "measurementMethod",
    "measurementRemarks",
  );
  return { path: "measurement-or-fact.csv", rowType: dwc("MeasurementOrFact"), terms, rows };
}

type StatementRow = ReleasedRows["statements"][number];

/** A number or word, or the end of a span. */
interface End {
  readonly end: "" | "minimum" | "maximum";
  readonly value: string | number | boolean;
}

function valuesOf(row: StatementRow): readonly End[] {
  const { number, word, truth, text, min, max, minWord, maxWord } = row;
  const held = [
    { end: "", value: number ?? word ?? truth ?? text },
    { end: "minimum", value: min ?? minWord },
    { end: "maximum", value: max ?? maxWord },
  ];
  return held.filter((each): each is End => each.value !== null);
}

function typeOf(row: StatementRow, label: string, end: End["end"]): string {
  const { part, meaning, measure, sex, lifeStage, animals } = row;
  const group = animals === null ? null : `for ${animals} animals`;
  const named = [label, part === "value" ? null : part, meaning, measure, sex, lifeStage, group, end];
  return named.filter(Boolean).join(", ");
}

function methodOf({ basis, sourceID, at, endpoint, acclimatedAt, individualCount }: StatementRow): string {
  const told = [
    sourceID === null ? basis : `${basis}: ${sourceID}`,
    at,
    endpoint && `endpoint ${endpoint}`,
    acclimatedAt === null ? null : `acclimated at ${acclimatedAt} °C`,
    individualCount === null ? null : `n = ${individualCount}`,
  ];
  return told.filter(Boolean).join("; ");
}

/** Vernacular names of species; languages as ISO 639-1, which the extension expects. */
function vernacularFile({ names }: ReleasedRows): ArchiveFile {
  const rows = names
    .filter(({ nameType, form }) => nameType === "vernacular" && form === null)
    .map(({ taxonID, name, language, rank }) => ({
      taxonID,
      vernacularName: name,
      language: language?.replace(/-.*/, "") ?? null,
      isPreferredName: rank === 1,
    }));
  return {
    path: "vernacular-name.csv",
    rowType: gbif("VernacularName"),
    terms: {
      vernacularName: dwc("vernacularName"),
      language: dct("language"),
      isPreferredName: gbif("isPreferredName"),
    },
    rows,
  };
}
