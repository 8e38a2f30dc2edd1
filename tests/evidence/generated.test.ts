import { describe, expect, test } from "vitest";
import * as catalog from "../../src/catalog";
import * as evidence from "../../src/evidence";
import { allRecords } from "../../src/evidence";
import { parseSpecies } from "../../src/schema";
import { files } from "../species/records";

test("every file of data/species is there, once and by id", () => {
  expect(allRecords.map(({ id }) => id)).toStrictEqual(files.map(({ id }) => id));
});

test("a record bears the name of its profile", () => {
  const idOf = (exports: object) =>
    Object.entries(exports).flatMap(([name, held]) =>
      typeof held?.id === "string" ? [[name, held.id]] : [],
    );
  expect(idOf(evidence)).toStrictEqual(idOf(catalog));
  expect(idOf(evidence)).toHaveLength(files.length);
});

describe.each(files)("$id", ({ id, json }) => {
  test("is what its file says, as parseSpecies reads it", () => {
    expect(evidence.recordById(id)).toStrictEqual(parseSpecies(json));
  });
});
