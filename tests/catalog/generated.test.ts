import { describe, expect, test } from "vitest";
import * as catalog from "../../src/catalog";
import { allSpecies } from "../../src/catalog";
import { recordById } from "../../src/evidence";
import { resolve } from "../../src/species";
import { files } from "../species/records";

/** `danio-rerio` as `danioRerio`. */
const inCamelCase = (id: string) =>
  id
    .split("-")
    .map((word, index) => (index === 0 ? word : `${word.charAt(0).toUpperCase()}${word.slice(1)}`))
    .join("");

test("every file of data/species is in the catalog, once and by id", () => {
  const ids = allSpecies.map(({ id }) => id);
  expect(ids).toStrictEqual(files.map(({ id }) => id));
  expect(ids).toStrictEqual([...new Set(ids)].sort());
});

test("beside the species and the two ways to look them up nothing is exported", () => {
  const names = files.map(({ id }) => inCamelCase(id));
  expect(Object.keys(catalog).sort()).toStrictEqual(
    ["allSpecies", "findSpecies", "speciesById", ...names].sort(),
  );
});

describe.each(allSpecies)("$id", (profile) => {
  const { listings: _, ...facts } = profile;

  test("is exported by its name in camel case", () => {
    expect(Object.entries(catalog)).toContainEqual([inCamelCase(profile.id), profile]);
  });

  test("is what its record resolves to", () => {
    const record = recordById(profile.id);
    expect(record && resolve(record)).toStrictEqual(facts);
  });

  test("survives being stored as JSON", () => {
    expect(JSON.parse(JSON.stringify(profile))).toStrictEqual(profile);
  });

  test("lacks no essential trait", () => {
    expect(profile).not.toHaveProperty("incomplete");
  });
});

test("laws that name a species, its genus or its family are with it", () => {
  const placesOf = (id: string) => catalog.speciesById(id)?.listings?.map(({ jurisdiction }) => jurisdiction);
  // Potamotrygon motoro stands in Appendix III; Neritidae in 71 FR 16973 of the United States.
  expect(placesOf("potamotrygon-motoro")).toContain("CITES");
  expect(placesOf("vittina-natalensis")).toStrictEqual(["United States"]);
  expect(placesOf("danio-rerio")).toBeUndefined();
});

test("each says where it applies, which it is, of which date, what it does and how that is known", () => {
  for (const { jurisdiction, instrument, date, effect, basis } of allSpecies.flatMap(
    ({ listings = [] }) => listings,
  )) {
    expect([jurisdiction, instrument, date].map((text) => text.length)).not.toContain(0);
    expect(effect).toMatch(/^[A-Z].+\.$/);
    expect(["published", "memory"]).toContain(basis);
  }
});
