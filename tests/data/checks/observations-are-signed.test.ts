import { expect, test } from "vitest";
import { observationsAreSigned } from "../../../data/checks/observations-are-signed";
import type { Source } from "../../../src/schema";
import { foundBy } from "./found";

const seen: Source = {
  id: "a-keeper",
  type: "personal_communication",
  title: "Danios over three winters",
  author: [{ family: "Keeper", given: "A." }],
  issued: { "date-parts": [[2026, 3, 1]] },
  custom: { observation: { animals: 12, days: 900 } },
};
const { author, ...anonymous } = seen;
const { issued, ...undated } = seen;
const { custom, ...letter } = seen;

const found = (file: Partial<Source>, observed?: true) =>
  foundBy(
    observationsAreSigned,
    { sources: { keeper: { cite: "a-keeper", ...(observed && { observed }) } } },
    [file],
  );

test("an observation is signed and dated, and the record says that it is one", async () => {
  expect(await found(seen, true)).toStrictEqual([]);
  expect(await found(anonymous, true)).toStrictEqual([
    "data/sources/a-keeper.json: an observation without author",
  ]);
  expect(await found({ ...seen, author: [] }, true)).toHaveLength(1);
  expect(await found(undated, true)).toStrictEqual([
    "data/sources/a-keeper.json: an observation without issued",
  ]);
});

test("what is observed in a record is an observation in its file, and the other way round", async () => {
  expect(await found(letter)).toStrictEqual([]);
  expect(await found(letter, true)).toStrictEqual([
    "data/species/danio-rerio.json: the source keeper is observed, and data/sources/a-keeper.json is no observation",
  ]);
  expect(await found(seen)).toStrictEqual([
    "data/species/danio-rerio.json: the source keeper is an observation, and does not say so",
  ]);
});

test("a source that is missing is no observation", async () => {
  expect(await found({ id: "another" }, true)).toHaveLength(1);
});
