import { describe, expect, test } from "vitest";
import { allRecords, recordById } from "../../src/evidence";
import { parseSpecies, type Source } from "../../src/schema";
import { filesOf } from "../schema/files";
import { files } from "../species/records";

/** The files of sources whose licence forbids commercial use. */
const forbidding = new Set(
  filesOf("sources")
    .map(({ json }) => json as Source)
    .filter(({ custom }) => custom?.commercial === false)
    .map(({ id }) => id),
);

test("FishBase and its tables forbid commercial use", () => {
  for (const id of ["fishbase", "fishbase-2018"]) expect(forbidding).toContain(id);
});

test("every file of data/species is there, once and by id", () => {
  expect(allRecords.map(({ id }) => id)).toStrictEqual(files.map(({ id }) => id));
});

describe.each(files)("$id", ({ id, json }) => {
  test("is what its file says, as parseSpecies reads it, each source with its licence", () => {
    const { sources, ...record } = parseSpecies(json);
    expect(recordById(id)).toStrictEqual({
      ...record,
      sources: Object.fromEntries(
        Object.entries(sources).map(([key, source]) => {
          const commercial = ![source.cite, source.root].some((cite) => cite && forbidding.has(cite));
          return [key, { ...source, commercial }];
        }),
      ),
    });
  });

  test("has a module of its own that holds the same", async () => {
    const module = await import(/* @vite-ignore */ `../../src/evidence/species/${id}.ts`);
    expect(module.default).toStrictEqual(recordById(id));
  });
});
