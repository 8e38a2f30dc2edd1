import { describe, expect, test } from "vitest";
import { allRecords, recordById } from "../../src/evidence";
import { parseSpecies } from "../../src/schema";
import { files } from "../species/records";

test("every file of data/species is there, once and by id", () => {
  expect(allRecords.map(({ id }) => id)).toStrictEqual(files.map(({ id }) => id));
});

describe.each(files)("$id", ({ id, json }) => {
  test("is what its file says, as parseSpecies reads it", () => {
    expect(recordById(id)).toStrictEqual(parseSpecies(json));
  });

  test("has a module of its own that holds the same", async () => {
    const module = await import(`../../src/evidence/species/${id}.ts`);
    expect(module.default).toStrictEqual(recordById(id));
  });
});
