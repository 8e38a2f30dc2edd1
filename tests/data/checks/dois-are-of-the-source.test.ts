import { expect, test } from "vitest";
import { doisAreOfTheSource } from "../../../data/checks/dois-are-of-the-source";
import type { Source } from "../../../src/schema";
import { foundBy } from "./found";

const found = (at: string, source: Partial<Source> = {}, reference: { readonly root?: string } = {}) =>
  foundBy(doisAreOfTheSource, { sources: { onuki: { cite: "onuki-2021", at, ...reference } } }, [
    { id: "onuki-2021", type: "article-journal", DOI: "10.18353/crustacea.50.0_33", ...source },
  ]);

test("a DOI that is not the one of the source is told with both", async () => {
  expect(await found("abstract at https://doi.org/10.18353/rcustacea.50.0_33")).toStrictEqual([
    "data/species/danio-rerio.json: the DOI 10.18353/rcustacea.50.0_33, and 10.18353/crustacea.50.0_33 in data/sources/onuki-2021.json",
  ]);
});

test.each([
  "abstract at https://doi.org/10.18353/crustacea.50.0_33",
  "https://doi.org/10.18353/Crustacea.50.0_33.pdf, page 35",
  "page 35",
])("%s fits", async (at) => {
  expect(await found(at)).toStrictEqual([]);
});

test("what a data set or a copy names may be the paper it took the figure from", async () => {
  expect(await found("row 7, of doi:10.1577/T04-197.1", { type: "dataset" })).toStrictEqual([]);
  expect(await found("page 3, of doi:10.1577/T04-197.1", {}, { root: "cortemeglia-2005" })).toStrictEqual([]);
});

test("a source without a DOI is not compared", async () => {
  expect(await found("doi:10.1577/T04-197.1", { DOI: undefined })).toStrictEqual([]);
});
