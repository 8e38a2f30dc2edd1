import { expect, test } from "vitest";
import { alike } from "../../../data/checks/laws-speak-german";
import { readFolder, root } from "../../../data/reading/files";
import { effectIn, jurisdictionIn } from "../../../src/report/messages/german-laws";
import type { Listings } from "../../../src/schema";

const laws = (await readFolder(root, "legal")).map(({ json }) => json as Listings);
const listings = laws.flatMap(({ listings }) => listings);

test("German has a name for the place of every law", () => {
  const places = [...laws, ...listings].flatMap(({ jurisdiction }) => jurisdiction ?? []);
  const untold = places.filter((place) => !alike.includes(place) && jurisdictionIn(place) === place);
  expect(untold).toEqual([]);
});

test("German tells what every law does", () => {
  const effects = listings.flatMap(({ effect }) => effect);
  expect(effects.filter((effect) => effectIn(effect).endsWith(effect))).toEqual([]);
});
