import { describe, expect, test } from "vitest";
import { allSpecies, speciesById } from "../../src/catalog";
import { recordById } from "../../src/evidence";
import { applyForm, resolve, type SpeciesProfile } from "../../src/species";
import { files } from "../species/records";

test("every file of data/species is in the catalog, once and by id", () => {
  const ids = allSpecies.map(({ id }) => id);
  expect(ids).toStrictEqual(files.map(({ id }) => id));
  expect(ids).toStrictEqual([...new Set(ids)].sort());
});

test("a profile is parsed once and can be changed nowhere, nor can the list", () => {
  expect(allSpecies[0]).toBe(allSpecies[0]);
  const [{ names, water }] = allSpecies as [(typeof allSpecies)[0]];
  for (const part of [allSpecies, names, names.en, water?.temperature?.value.kept]) {
    expect(Object.isFrozen(part)).toBe(true);
  }
  expect(() => Object.assign(allSpecies, { 0: {} })).toThrow(TypeError);
});

const unsourced = (resolved: unknown) =>
  JSON.parse(JSON.stringify(resolved), (key, held) => (key === "said" ? undefined : held));

/** A profile without the laws that name forms of it. */
const withoutLaws = <Facts extends Pick<SpeciesProfile, "forms">>(facts: Facts): Facts => ({
  ...facts,
  ...(facts.forms && {
    forms: Object.fromEntries(
      Object.entries(facts.forms).map(([id, { listings: _, ...form }]) => [id, form]),
    ),
  }),
});

describe.each(allSpecies)("$id", (profile) => {
  const { listings: _, ...facts } = profile;

  test("has a module of its own that holds the same", async () => {
    const module = await import(/* @vite-ignore */ `../../src/catalog/species/${profile.id}.ts`);
    expect(module.default).toStrictEqual(profile);
    expect(Object.isFrozen(module.default.taxonomy)).toBe(true);
  });

  test("is what its record resolves to, without the keys of sources", () => {
    const record = recordById(profile.id);
    expect(unsourced(record && resolve(record))).toStrictEqual(withoutLaws(facts));
  });

  test("survives being stored as JSON", () => {
    expect(JSON.parse(JSON.stringify(profile))).toStrictEqual(profile);
  });

  test("lacks no essential trait", () => {
    expect(profile).not.toHaveProperty("incomplete");
  });
});

test("an id that moved has a module too: that of the species it moved to", async () => {
  const { default: moved } = await import("vivary/catalog/barbus-tetrazona");
  expect(moved.id).toBe("puntigrus-tetrazona");
});

test("laws that name a species, its genus or its family are with it", () => {
  const placesOf = (id: string) => speciesById(id)?.listings?.map(({ jurisdiction }) => jurisdiction);
  // Potamotrygon motoro stands in Appendix III; Neritidae in 71 FR 16973 of the United States.
  expect(placesOf("potamotrygon-motoro")).toContain("CITES");
  expect(placesOf("vittina-natalensis")).toStrictEqual(["United States"]);
  expect(placesOf("danio-rerio")).toBeUndefined();
});

test("a law that names a form is with the form alone, and with the profile to which it is applied", () => {
  const danio = speciesById("danio-rerio") ?? expect.fail();
  const placesOf = ({ listings }: Pick<SpeciesProfile, "listings">) =>
    listings?.map(({ jurisdiction }) => jurisdiction);
  expect(placesOf(applyForm(danio, "fluorescent"))).toStrictEqual(["European Union"]);
  expect(placesOf(applyForm(danio, "long-fin"))).toBeUndefined();
  for (const { forms = {}, listings = [] } of allSpecies) {
    expect(listings.some(({ effect }) => effect.startsWith("Genetically modified"))).toBe(false);
    for (const [form, { care, listings: laws }] of Object.entries(forms)) {
      const isModified = care?.rehoming?.value.en.includes("genetically modified") ?? false;
      expect([form, laws?.length ?? 0]).toStrictEqual([form, isModified ? 1 : 0]);
    }
  }
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
