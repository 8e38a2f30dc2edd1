import { expect, test } from "vitest";
import { pathText } from "../../../src/errors";
import { parseSpecies, safeParseSpecies } from "../../../src/schema";
import { essentialTraits, resolve } from "../../../src/species";
import { checkout } from "../checkout";

const file = "data/species/danio-kyathit.json";

test("a name starts a record: the checks then ask for what is still blank, and for nothing else", () => {
  const project = checkout();
  expect(project.run("species.mjs", "new", "Danio kyathit")).toMatchObject({
    status: 0,
    said: expect.stringContaining(file),
  });
  const record = JSON.parse(project.read(file));
  expect(record).toMatchObject({
    $schema: "../schemas/species.schema.json",
    id: "danio-kyathit",
    taxonomy: { name: "Danio kyathit" },
  });
  const parsed = safeParseSpecies(record);
  expect(parsed.success || parsed.problems.map(({ path }) => pathText(path))).toStrictEqual([
    "taxonomy.authority",
    "taxonomy.family",
    "taxonomy.order",
    "taxonomy.kind",
    "names.en[0]",
    "sources.source.cite",
    "sources.source.at",
  ]);
});

test("filled in, it is a record whose essential traits wait, each with a note on what to look for", () => {
  const project = checkout();
  project.run("species.mjs", "new", "Danio", "kyathit");
  const text = project.read(file);
  const blank = JSON.parse(text);
  const record = parseSpecies({
    ...blank,
    taxonomy: {
      name: "Danio kyathit",
      authority: "Deraniyagala, 1929",
      family: "Cyprinidae",
      order: "Cypriniformes",
      kind: "fish",
    },
    names: { en: ["orange-finned danio"] },
    sources: { source: { cite: "a-book", at: "page 7" } },
  });
  expect(resolve(record).incomplete).toStrictEqual(essentialTraits);
  expect(record.water?.temperature).toMatchObject([
    { by: "source", note: expect.stringContaining("In degC") },
  ]);
  expect(record.social?.living?.[0]?.note).toContain("harem: One male with several females.");
  expect(project.run("format.mjs", "--check")).toMatchObject({ status: 0 });
});

test.each([
  ["Danio rerio", "data/species/danio-rerio.json"],
  ["Barbus tetrazona", "data/species/puntigrus-tetrazona.json"],
])("%s has a record, which is named and left as it is", (name, known) => {
  const project = checkout();
  const before = project.read(known);
  expect(project.run("species.mjs", "new", name)).toMatchObject({
    status: 1,
    said: expect.stringContaining(known),
  });
  expect(project.read(known)).toBe(before);
});

test.each(["", "Danio", "danio rerio", "Danio ../rerio"])("%o is no scientific name", (name) => {
  expect(checkout().run("species.mjs", "new", name)).toMatchObject({
    status: 1,
    said: `Expected a scientific name such as "Danio rerio", found "${name}".\n`,
  });
});
