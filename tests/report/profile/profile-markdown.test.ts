import { expect, test } from "vitest";
import { allSpecies } from "vivary/catalog";
import danioRerio from "vivary/catalog/danio-rerio";
import puntigrusTetrazona from "vivary/catalog/puntigrus-tetrazona";
import { InvalidInputError } from "../../../src/errors";
import { profileMarkdown } from "../../../src/report";
import { applyForm, factAt, type SpeciesProfile, traitPaths, traitTable } from "../../../src/species";

const withForms = allSpecies.flatMap((species) => [
  species,
  ...Object.keys(species.forms ?? {}).map((form) => applyForm(species, form)),
]);

/** The cells of each row of a table, split at pipes that are not escaped. */
const rows = (page: string) =>
  page
    .split("\n")
    .filter((line) => line.startsWith("|"))
    .map((line) =>
      line
        .split(/(?<!\\)\|/)
        .slice(1, -1)
        .map((cell) => cell.trim()),
    );

test("every known trait of every species and form stands on its page once, with its support", () => {
  for (const species of withForms) {
    for (const units of ["metric", "us", "imperial"] as const) {
      const page = profileMarkdown(species, { units });
      expect(page).not.toMatch(/undefined|NaN|\[object/);
      const cells = rows(page);
      expect(cells.every((row) => row.length === 4)).toBe(true);
      const known = traitPaths.filter((path) => factAt(species, path)).map((path) => traitTable[path].label);
      const labels = cells.map(([label]) => label).filter((label) => label !== "trait" && label !== "---");
      expect(labels).toEqual(known);
      expect(cells.every(([, value, , support]) => value && support)).toBe(true);
    }
  }
});

test("a form's page bears its name", () => {
  expect(profileMarkdown(applyForm(puntigrusTetrazona, "long-fin"))).toMatch(/^# Long-fin tiger barb\n/);
});

test("a length is shown in inches to those who ask, 2.54 cm each", () => {
  // International yard and pound agreement of 1959: 4 cm / 2.54 = 1.5748 in.
  expect(profileMarkdown(danioRerio)).toContain("4 cm TL");
  expect(profileMarkdown(danioRerio, { units: "us" })).toContain("1.6 in TL");
});

test("hostile text cannot break the page", () => {
  const hostile: SpeciesProfile = {
    ...danioRerio,
    names: { en: ["x | y\n## <b>z</b>"] },
    care: { rehoming: { value: { en: "a | b\n| c | d |" }, basis: "curated" } },
  };
  const page = profileMarkdown(hostile);
  expect(page.match(/^#{1,2} /gm)?.length).toBe(profileMarkdown(danioRerio).match(/^#{1,2} /gm)?.length);
  expect(rows(page).every((row) => row.length === 4)).toBe(true);
  expect(page).not.toContain("<b>");
});

test("an unknown system of units is refused", () => {
  expect(() => Reflect.apply(profileMarkdown, undefined, [danioRerio, { units: "cubits" }])).toThrow(
    InvalidInputError,
  );
});

test.each([
  undefined,
  "danio-rerio",
  {},
  { ...danioRerio, names: { en: [7] } },
  { ...danioRerio, taxonomy: {} },
  { ...danioRerio, water: { temperature: "hot" } },
  { ...danioRerio, space: { baseLength: { value: null, basis: "published" } } },
  { ...danioRerio, space: { jumps: { value: "seldom", basis: "hearsay" } } },
])("what is no profile is refused: %#", (profile) => {
  expect(() => Reflect.apply(profileMarkdown, undefined, [profile])).toThrow(InvalidInputError);
});
