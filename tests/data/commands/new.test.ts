import { expect, test } from "vitest";
import { check } from "../../../data/commands/check";
import { start, startFrom } from "../../../data/commands/new";
import { format, unformatted } from "../../../data/writing/formatting";
import { parseSpecies, safeParseSpecies } from "../../../src/schema";
import { resolve, statementsOf, traitTable } from "../../../src/species";
import { answered } from "../answered";
import { project, textOf } from "../project";

const file = "data/species/danio-kyathit.json";

const asked = [
  "origin.waters",
  "size.adultLength",
  "water.temperature",
  "water.pH",
  "water.generalHardness",
  "space.baseLength",
  "space.zones",
  "temperament.acts",
  "social.living",
  "social.group",
  "predation.eats",
] as const;

test("a name starts a record: the checks then ask for what is still blank, and for nothing else", async () => {
  const { root, read } = project();
  const answer = await start(root, "Pareutropius buffei");
  expect(answer.failed).toBe(false);
  expect(textOf(answer)).toContain("data/species/pareutropius-buffei.json");
  const record = JSON.parse(read("data/species/pareutropius-buffei.json"));
  expect(record).toMatchObject({
    $schema: "../schemas/species.schema.json",
    id: "pareutropius-buffei",
    taxonomy: { name: "Pareutropius buffei" },
  });
  const parsed = safeParseSpecies(record);
  const blank = parsed.success ? [] : parsed.problems.map(({ path }) => path.join("."));
  expect([...new Set(blank)]).toStrictEqual([
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

/** A record of the template with what is not asked of traits. */
const named = (blank: { readonly taxonomy: object }) => ({
  ...blank,
  taxonomy: { ...blank.taxonomy, authority: "Fang, 1998" },
  names: { en: ["orange-finned danio"] },
  sources: { source: { cite: "fishbase", at: "page 7" } },
});

/** Every line of a file without its question. */
const unasked = (text: string) => text.replaceAll(/, "note": "To fill in: (?:[^"\\]|\\.)*"/g, "");

test("the questions tell how the answers look in a relative, and every one of them is asked for", async () => {
  const { root, read, write } = project();
  expect(textOf(await start(root, "Danio kyathit"))).toContain("how the answers look in Danio choprae");
  const blank = JSON.parse(read(file));
  expect(blank.taxonomy).toMatchObject({ family: "Danionidae", order: "Cypriniformes", kind: "fish" });
  const record = parseSpecies(named(blank));
  for (const trait of asked) {
    const [line, ...others] = statementsOf(record, trait);
    expect(others).toStrictEqual([]);
    expect(line).toMatchObject({ by: "source", note: expect.stringContaining(traitTable[trait].about) });
    expect(line?.note).toContain(" In Danio choprae: ");
  }
  expect(record.water?.temperature?.[0]?.note).toContain("In degC");
  expect(record.water?.temperature?.[0]?.note).toContain("In Danio choprae: { min: 20, max: 25 }.");
  expect(record.social?.living?.[0]?.note).toContain("harem: One male with several females.");
  expect(await unformatted(root)).toStrictEqual([]);

  write(file, JSON.stringify(named(blank)));
  await format(root);
  const told = textOf(await check(root, "danio-kyathit"));
  expect(told.match(/a question of the new file/g)).toHaveLength(asked.length);
});

test("who takes the questions out without answering them is asked for each value", async () => {
  const { root, read, write } = project();
  await start(root, "Danio kyathit");
  const blank = JSON.parse(read(file));
  for (const trait of asked) {
    const [section = "", name = ""] = trait.split(".");
    expect(blank[section][name][0]).not.toHaveProperty("value");
  }
  write(file, JSON.stringify(named(blank)));
  await format(root);
  write(file, unasked(read(file)));
  expect(textOf(await check(root, "danio-kyathit")).match(/expected a value, or a note/g)).toHaveLength(
    asked.length,
  );
});

test("once every question is answered, the record is whole", async () => {
  const { root, read, write } = project();
  await start(root, "Danio kyathit");
  const [blank, relative] = [file, "data/species/danio-choprae.json"].map((path) => JSON.parse(read(path)));
  write(file, JSON.stringify(answered(named(blank), relative)));
  await format(root);
  expect(textOf(await check(root, "danio-kyathit"))).toBe(`${file}: 0 problems.`);
  expect(resolve(parseSpecies(JSON.parse(read(file)))).incomplete).toBeUndefined();
});

test("another relative may be named, by any of its names", async () => {
  const { root, read } = project();
  expect(await start(root, "Neolebias ansorgii", { like: "neon tetra" })).toMatchObject({ failed: false });
  expect(JSON.parse(read("data/species/neolebias-ansorgii.json")).taxonomy.order).toBe("Characiformes");
  expect(await start(root, "Neolebias powelli", { like: "unicorn" })).toMatchObject({ failed: true });
});

test.each(["neon tetra", "paracheirodon-innesi"])(
  "%s behind the name is a relative whose option was swallowed",
  async (like) => {
    const { root, read } = project();
    expect(await start(root, `Neolebias ansorgii ${like}`)).toStrictEqual({
      lines: [
        `${like} stands behind the name. Did you mean: npm run species new Neolebias ansorgii -- --like "${like}"`,
      ],
      failed: true,
    });
    expect(() => read("data/species/neolebias-ansorgii-paracheirodon-innesi.json")).toThrow();
  },
);

test.each(["Corydoras sp.", "Corydoras CW010", "Hypancistrus L46", "Amphilophus citrinellus × labiatus"])(
  "%s has no name of its own, and is said to be out of scope",
  async (name) => {
    expect(textOf(await start(project().root, name))).toContain("out of scope");
  },
);

test.each([
  ["Danio rerio", "data/species/danio-rerio.json"],
  ["danio rerio", "data/species/danio-rerio.json"],
  ["Barbus tetrazona", "data/species/puntigrus-tetrazona.json"],
  ["Neon tetra", "data/species/paracheirodon-innesi.json"],
])("%s has a record, which is named and left as it is", async (name, known) => {
  const { root, read } = project();
  const before = read(known);
  expect(await start(root, name)).toStrictEqual({ lines: [`${name} has a record: ${known}`], failed: true });
  expect(read(known)).toBe(before);
});

test.each(["danio kyathit", "DANIO KYATHIT", "Danio Kyathit"])("%s has a capital amiss", async (name) => {
  expect(textOf(await start(project().root, name))).toBe(
    `Expected a scientific name such as "Danio rerio", found "${name}". Did you mean Danio kyathit?`,
  );
});

test.each(["", "Danio", "Danio ../kyathit"])("%o is no scientific name", async (name) => {
  expect(await start(project().root, name)).toStrictEqual({
    lines: [`Expected a scientific name such as "Danio rerio", found "${name}".`],
    failed: true,
  });
});

const issue = `### Scientific name

Danio kyathit

### English name

orange-finned danio, spotted danio

### Source

Fang 1998, page 7

### temperature

16 to 24 °C,
cooler in winter

### Adult length

_No response_
`;

test.each([issue, issue.replaceAll("\n", "\r\n")])(
  "an issue starts a record, with what it says beside the questions",
  async (text) => {
    const { root, read } = project();
    expect(await startFrom(root, text)).toMatchObject({ failed: false });
    const { names, sources, water, size } = JSON.parse(read(file));
    expect(names).toStrictEqual({ en: ["orange-finned danio", "spotted danio"] });
    expect(sources.source.at).toBe("Fang 1998, page 7");
    expect(water.temperature[0].note).toMatch(/The issue says: 16 to 24 °C, cooler in winter$/);
    expect(size.adultLength[0].note).not.toContain("The issue says");
  },
);

test("an issue cannot smuggle in what a record does not take, and names an animal", async () => {
  const { root, read } = project();
  await startFrom(root, issue.replace("16 to 24 °C,", `16 */ \u202e${"x".repeat(3000)}`));
  expect(JSON.parse(read(file)).water.temperature[0].note).toMatch(/The issue says: 16 x+$/);
  expect(textOf(await startFrom(root, "Please add a fish."))).toContain("### Scientific name");
});

test("a genus that nobody here is of may be a slip for another", async () => {
  const { root } = project();
  expect(textOf(await start(root, "Tanichtys micagemmae"))).toContain("Did you mean Tanichthys?");
  expect(textOf(await start(root, "Hasemania nana"))).not.toContain("Did you mean");
});
