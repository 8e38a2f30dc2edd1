import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { XMLParser } from "fast-xml-parser";
import { describe, expect, test } from "vitest";
import { validateXML } from "xmllint-wasm";
import { root } from "../../../data/reading/files";
import { darwinCoreFiles } from "../../../data/tables/darwin-core";
import { releasedRows } from "../../../data/tables/data-package";

const standard = (name: string) => readFile(join(root, "tests/tables/standards", name), "utf8");

const rows = releasedRows([]);
const files = darwinCoreFiles(rows);
const meta = files["meta.xml"] ?? "";
const terms: Readonly<Record<string, { readonly terms: readonly string[] }>> = JSON.parse(
  await standard("darwin-core-extensions.json"),
);

/** A file as meta.xml describes it. */
interface Told {
  readonly "@rowType": string;
  readonly "@fieldsTerminatedBy": string;
  readonly "@linesTerminatedBy": string;
  readonly "@fieldsEnclosedBy": string;
  readonly "@ignoreHeaderLines": string;
  readonly files: { readonly location: string };
  readonly field: readonly { readonly "@index": string; readonly "@term": string }[];
}

const { archive }: { readonly archive: { readonly core: Told; readonly extension: readonly Told[] } } =
  new XMLParser({
    ignoreAttributes: false,
    attributeNamePrefix: "@",
    isArray: (name) => name === "extension",
  }).parse(meta);
const told = [archive.core, ...archive.extension];

/** The rows of a file, read by nothing but what meta.xml says of it: the id of the taxon, and each term's cell. */
function read(file: Told) {
  const lines: readonly (readonly string[])[] = parse(files[file.files.location] ?? "", {
    delimiter: file["@fieldsTerminatedBy"],
    record_delimiter: file["@linesTerminatedBy"].replace("\\r", "\r").replace("\\n", "\n"),
    quote: file["@fieldsEnclosedBy"],
    from: 1 + Number(file["@ignoreHeaderLines"]),
  });
  return lines.map((cells) => ({
    id: cells[0] ?? "",
    ...Object.fromEntries(
      file.field.map((field) => [field["@term"].replace(/.*\//, ""), cells[Number(field["@index"])] ?? ""]),
    ),
  })) as readonly Readonly<Record<string, string>>[];
}

const named = (rowType: string) => read(told.find((file) => file["@rowType"].endsWith(rowType)) as Told);
const taxa = named("Taxon");
const measurements = named("MeasurementOrFact");
const vernacular = named("VernacularName");

/** What libxml2 says of a text by the schema that the standard publishes; its imports are remote and not needed. */
async function problemsOf(xml: string) {
  const { valid, errors } = await validateXML({
    xml: [{ fileName: "meta.xml", contents: xml }],
    schema: [await standard("darwin-core-text.xsd")],
  });
  return valid ? [] : errors.map(({ message }) => message);
}

describe("meta.xml", () => {
  test("holds to the schema of the standard", async () => {
    expect(await problemsOf(meta)).toStrictEqual([]);
  });

  test("would not without the ids of the core", async () => {
    expect(await problemsOf(meta.replaceAll('<coreid index="0"/>', ""))).not.toStrictEqual([]);
  });

  test("names every file", () => {
    const locations = told.map((file) => file.files.location);
    expect(["meta.xml", ...locations]).toStrictEqual(Object.keys(files));
  });

  test.each(told.map((file) => [file.files.location, file] as const))(
    "%s has terms of its extension alone",
    (_, file) => {
      const allowed = terms[file["@rowType"]]?.terms ?? [];
      expect(allowed.length).toBeGreaterThan(0);
      for (const field of file.field) expect(allowed).toContain(field["@term"]);
    },
  );
});

describe("the taxa", () => {
  test("are all species, and their synonyms that point to them", () => {
    const accepted = taxa.filter(({ taxonomicStatus }) => taxonomicStatus === "accepted");
    expect(accepted.map(({ id }) => id)).toStrictEqual(rows.taxa.map(({ taxonID }) => taxonID));
    const ids = new Set(accepted.map(({ id }) => id));
    expect(taxa.filter(({ acceptedNameUsageID = "" }) => !ids.has(acceptedNameUsageID))).toStrictEqual([]);
    expect(taxa.length).toBeGreaterThan(accepted.length);
  });

  test("have ids that none shares", () => {
    expect(new Set(taxa.map(({ id }) => id)).size).toBe(taxa.length);
  });
});

// The International Code of Zoological Nomenclature, articles 5.1 and 5.2: the name of a species is of two words, that of a
// subspecies of three (from memory). Open names, with a sign or a number, are none.
test.each([
  ["Barbus tetrazona", "Barbus tetrazona", "species", "synonym"],
  ["Kryptopterus minor (misapplied)", "Kryptopterus minor", "species", "misapplied"],
  ["Rasbora heteromorpha espei", "Rasbora heteromorpha espei", "subspecies", "synonym"],
  ["Ancistrus sp. 3", "Ancistrus sp. 3", "", "synonym"],
  ["Caridina cf. cantonensis", "Caridina cf. cantonensis", "", "synonym"],
  ["Puntius sp. 'Odessa'", "Puntius sp. 'Odessa'", "", "synonym"],
  ["Procambarus fallax f. virginalis", "Procambarus fallax f. virginalis", "", "synonym"],
])("the synonym %s is told as what it is", (name, scientificName, taxonRank, taxonomicStatus) => {
  const synonym = rows.names.find((row) => row.nameType === "synonym" && row.name === name);
  expect(taxa.find(({ id }) => id === synonym?.nameID)).toMatchObject({
    scientificName,
    taxonRank,
    taxonomicStatus,
  });
});

describe("the measurements", () => {
  test("are each of a species, with ids that none shares", () => {
    const ids = new Set(taxa.map(({ id }) => id));
    expect(measurements.filter(({ id = "" }) => !ids.has(id))).toStrictEqual([]);
    expect(new Set(measurements.map(({ measurementID }) => measurementID)).size).toBe(measurements.length);
  });

  test("give a span as two rows under one parent", () => {
    const span = rows.statements.find(
      ({ trait, counts, min, max }) =>
        trait === "water.pH" && counts === "used" && min !== null && max !== null,
    );
    const ends = measurements.filter(({ parentMeasurementID }) => parentMeasurementID === span?.statementID);
    expect(
      ends.map(({ measurementType, measurementValue }) => [measurementType, measurementValue]),
    ).toStrictEqual([
      ["pH, kept, minimum", String(span?.min)],
      ["pH, kept, maximum", String(span?.max)],
    ]);
    expect(ends[0]?.measurementUnit).toBe("[pH]");
  });

  test("hold every end and value of the species, and nothing that was set aside or only repeats", () => {
    const counting = rows.statements.filter(
      ({ form, counts }) => form === null && ["used", "agrees", "stands", "informs"].includes(counts),
    );
    const cells = counting.flatMap(({ number, min, max, word, minWord, maxWord, truth, text }) =>
      [number, min, max, word, minWord, maxWord, truth, text].filter((cell) => cell !== null),
    );
    expect(measurements.map(({ measurementValue }) => measurementValue).sort()).toStrictEqual(
      cells.map(String).sort(),
    );
  });
});

test("vernacular names are of species, in languages of two letters", () => {
  const ids = new Set(taxa.map(({ id }) => id));
  expect(vernacular.length).toBeGreaterThan(400);
  for (const { id = "", language, vernacularName } of vernacular) {
    expect(ids.has(id)).toBe(true);
    expect(language).toMatch(/^[a-z]{2}$/);
    expect(vernacularName).not.toBe("");
  }
});
