import { expect, test } from "vitest";
import { sourcesNameTheSpecies } from "../../../data/checks/sources-name-the-species";
import type { SourceReference } from "../../../src/species";
import { leastRecord } from "../../species/records";
import { foundBy } from "./found";

const taxonomy = { ...leastRecord.taxonomy, synonyms: ["Brachydanio rerio"] };
const found = (source: Partial<SourceReference>) =>
  foundBy(sourcesNameTheSpecies, {
    taxonomy,
    sources: { study: { cite: "a-study", at: "p. 4", ...source } },
  });

test("a source may record the species under a synonym that the record lists", async () => {
  expect(await found({ under: "Brachydanio rerio" })).toStrictEqual([]);
  expect(await found({})).toStrictEqual([]);
});

test.each(["Danio rerio", "Danio frankei", "brachydanio rerio"])("%s is no synonym of it", async (under) => {
  expect(await found({ under })).toStrictEqual([
    `data/species/danio-rerio.json: the source study records it under ${under}`,
  ]);
});

test("figures may be of a relative or of the genus", async () => {
  for (const of of ["Danio kyathit", "Danio", "Danionidae"]) expect(await found({ of })).toStrictEqual([]);
});

test.each(["Danio rerio", "Brachydanio rerio"])("%s is the species itself, no relative", async (of) => {
  expect(await found({ of })).toStrictEqual([
    `data/species/danio-rerio.json: the source study is said to be of ${of}, which is a name of this species`,
  ]);
});
