import { expect, test } from "vitest";
import danioRerio from "vivary/catalog/danio-rerio";
import { allSpecies, speciesById } from "../../src/catalog";

test("an id gives the profile itself", () => {
  expect(speciesById("danio-rerio")).toStrictEqual(danioRerio);
  for (const profile of allSpecies) expect(speciesById(profile.id)).toBe(profile);
});

test.each([
  "",
  "unicorn",
  "Danio rerio",
  "Danio-Rerio",
  " danio-rerio",
  "0",
  "length",
  "__proto__",
  "constructor",
])("%o is no id", (id) => {
  expect(speciesById(id)).toBeUndefined();
});

test.each([
  ["corydoras-paleatus", "hoplisoma-paleatum"],
  ["puntius-tetrazona", "puntigrus-tetrazona"],
])("%s, as the trade has it, is %s", (id, to) => {
  expect(speciesById(id)?.id).toBe(to);
});
