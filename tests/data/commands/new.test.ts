import { expect, test } from "vitest";
import { start } from "../../../data/commands/new";
import { unformatted } from "../../../data/formatting";
import { parseSpecies, safeParseSpecies } from "../../../src/schema";
import { essentialTraits, resolve } from "../../../src/species";
import { project, textOf } from "../project";

const file = "data/species/danio-kyathit.json";

test("a name starts a record: the checks then ask for what is still blank, and for nothing else", async () => {
  const { root, read } = project();
  const answer = await start(root, "Danio kyathit");
  expect(answer.failed).toBe(false);
  expect(textOf(answer)).toContain(file);
  const record = JSON.parse(read(file));
  expect(record).toMatchObject({
    $schema: "../schemas/species.schema.json",
    id: "danio-kyathit",
    taxonomy: { name: "Danio kyathit" },
  });
  const parsed = safeParseSpecies(record);
  expect(parsed.success || parsed.problems.map(({ path }) => path.join("."))).toStrictEqual([
    "taxonomy.authority",
    "taxonomy.family",
    "taxonomy.order",
    "taxonomy.kind",
    "names.en.0",
    "sources.source.cite",
    "sources.source.at",
    "sources.source",
  ]);
});

test("filled in, it is a record whose essential traits wait, each with a note on what to look for", async () => {
  const { root, read } = project();
  await start(root, "Danio kyathit");
  const blank = JSON.parse(read(file));
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
  expect(await unformatted(root)).toStrictEqual([]);
});

test.each([
  ["Danio rerio", "data/species/danio-rerio.json"],
  ["Barbus tetrazona", "data/species/puntigrus-tetrazona.json"],
])("%s has a record, which is named and left as it is", async (name, known) => {
  const { root, read } = project();
  const before = read(known);
  expect(await start(root, name)).toStrictEqual({ lines: [`${name} has a record: ${known}`], failed: true });
  expect(read(known)).toBe(before);
});

test.each(["", "Danio", "danio rerio", "Danio ../rerio"])("%o is no scientific name", async (name) => {
  expect(await start(project().root, name)).toStrictEqual({
    lines: [`Expected a scientific name such as "Danio rerio", found "${name}".`],
    failed: true,
  });
});
