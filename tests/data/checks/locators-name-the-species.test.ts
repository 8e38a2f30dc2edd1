import { expect, test } from "vitest";
import { locatorsNameTheSpecies } from "../../../data/checks/locators-name-the-species";
import { root } from "../../../data/reading/files";
import { resolve, type SourceReference } from "../../../src/species";
import { leastRecord } from "../../species/records";

const danio = {
  ...leastRecord,
  taxonomy: { ...leastRecord.taxonomy, synonyms: ["Brachydanio rerio"] },
  identifiers: { fishbase: "4653" },
};
const betta = {
  ...leastRecord,
  id: "betta-splendens",
  taxonomy: { ...leastRecord.taxonomy, name: "Betta splendens" },
};

/** What is found where a source of the zebra danio was read there, beside the record of a betta. */
async function found(at: string, rest: Partial<SourceReference> = {}): Promise<readonly string[]> {
  const records = [{ ...danio, sources: { study: { cite: "a-study", at, ...rest } } }, betta];
  const slips = await locatorsNameTheSpecies.find({
    root,
    files: { species: [], sources: [], moved: [], legal: [], standards: [] },
    problems: [],
    records: records.map((record) => ({
      path: `data/species/${record.id}.json`,
      record,
      profile: resolve(record),
    })),
  });
  return slips.map((slip) => slip.found);
}

const page = (genus: string, epithet: string) =>
  `https://fishbase.example/Summary.php?GenusName=${genus}&SpeciesName=${epithet}&print=`;

test.each([
  "p. 4",
  "row Danio rerio, tables of 2020",
  "row Brachydanio rerio, tables of 2020",
  "rows Danio rerio and Betta splendens",
  "SpecCode 4653, published table",
  "https://example.org/what-betta-splendens-does-to-others",
  page("Danio", "rerio"),
])("%s may be a place for the zebra danio", async (at) => {
  expect(await found(at)).toStrictEqual([]);
});

test.each([
  ["row Betta splendens, tables of 2020", "Betta splendens"],
  [page("Betta", "splendens"), "Betta splendens"],
  [page("Danio", "choprae"), "Danio choprae"],
  ["SpecCode 4768, published table", "SpecCode 4768, where identifiers.fishbase is 4653"],
])("%s is the place of another species", async (at, stranger) => {
  expect(await found(at)).toStrictEqual([`a place in study that names ${stranger}`]);
  expect(await found(at, { of: "Betta splendens" })).toStrictEqual([]);
});

test("a synonym may have a number of its own", async () => {
  expect(await found("SpecCode 4768", { under: "Brachydanio rerio" })).toStrictEqual([]);
});
