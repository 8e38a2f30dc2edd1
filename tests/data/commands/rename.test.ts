import { expect, test } from "vitest";
import { check } from "../../../data/commands/check";
import { rename } from "../../../data/commands/rename";
import { split } from "../../../data/commands/split";
import { type Statement, type Statements, statementsOf, traitPaths } from "../../../src/species";
import { project, textOf } from "../project";

const neon = "data/species/paracheirodon-innesi.json";
const json = (text: string) => JSON.parse(text);

test("a species gets another name: its id forwards, what led to it does so in one step, and all stays in order", async () => {
  const { root, read, write } = project();
  const barb = json(read("data/species/pethia-conchonius.json"));
  const other = json(read("data/species/pethia-padamya.json"));
  expect(textOf(await rename(root, "tiger barb", "Novabarbus tetrazona"))).toContain(
    "data/moved/puntigrus-tetrazona.json forwards.",
  );
  expect(() => read("data/species/puntigrus-tetrazona.json")).toThrow();
  const { id, taxonomy } = json(read("data/species/novabarbus-tetrazona.json"));
  expect(id).toBe("novabarbus-tetrazona");
  expect(taxonomy).toMatchObject({ name: "Novabarbus tetrazona" });
  expect(taxonomy.synonyms[0]).toBe("Puntigrus tetrazona");
  expect(json(read("data/moved/puntigrus-tetrazona.json")).to).toBe("novabarbus-tetrazona");
  expect(json(read("data/moved/barbus-tetrazona.json")).to).toBe("novabarbus-tetrazona");
  expect(textOf(await check(root))).toMatch(/: 0 problems\.$/);

  write("data/species/pethia-conchonius.json", JSON.stringify(barb));
  write("data/species/pethia-padamya.json", JSON.stringify(other));
  const back = await rename(root, "novabarbus-tetrazona", "Puntigrus tetrazona");
  expect(back.failed).toBe(false);
  expect(textOf(await check(root))).toMatch(/: 0 problems\.$/);
});

test("partners and tables of official guidance name a species by its new id", async () => {
  const { root, read } = project();
  const said = textOf(await rename(root, "Danio rerio", "Brachydanio nova"));
  expect(said).toContain("data/standards/");
  expect(read("data/standards/germany.json")).toContain('"brachydanio-nova"');
  expect(read("data/standards/germany.json")).not.toContain('"danio-rerio"');
  expect(textOf(await check(root, "brachydanio-nova"))).toMatch(/: 0 problems\.$/);
});

test("a name that is none, or that another record has, changes nothing", async () => {
  const { root, read } = project();
  const before = read(neon);
  for (const name of ["Danio rerio", "neon", "Neon"])
    expect(await rename(root, "paracheirodon-innesi", name)).toMatchObject({ failed: true });
  expect(textOf(await rename(root, "paracheirodon-inessi", "Neon novus"))).toBe(
    "No record is called paracheirodon-inessi. Did you mean paracheirodon-innesi?",
  );
  expect(read(neon)).toBe(before);
});

test("one species becomes two: the second starts with the figures of the first, which stand in for it", async () => {
  const { root, read } = project();
  const before = read(neon);
  expect(await split(root, "neon tetra", "Paracheirodon novus")).toMatchObject({ failed: false });
  expect(read(neon)).toBe(before);
  const second = json(read("data/species/paracheirodon-novus.json"));
  expect(second.taxonomy).not.toHaveProperty("synonyms");
  expect(second).not.toHaveProperty("identifiers");
  for (const source of Object.values(second.sources)) expect(source).toHaveProperty("of");
  const told = textOf(await check(root, "paracheirodon-novus"));
  expect(told).toContain("taxonomy.authority");
  expect(told).toContain("a question of the new file");
  expect(told).not.toContain("stands in");
  expect(told).not.toContain("a source that some statement names");
  expect(await split(root, "neon tetra", "Danio rerio")).toMatchObject({ failed: true });
});

test("what no source says of the first is asked anew of the second", async () => {
  const { root, read, write } = project();
  const file = "data/species/danio-novus.json";
  const told = textOf(await split(root, "danio-rerio", "Danio novus"));
  const first = json(read("data/species/danio-rerio.json"));
  const second = json(read(file));
  const unsourced = (record: Statements, sections: RegExp) =>
    traitPaths
      .filter((trait) => sections.test(trait))
      .flatMap((trait): readonly Statement[] => statementsOf(record, trait))
      .filter(({ by }) => by === "common-practice" || by === "curator");
  const grave = /^(temperament|social|predation)/;
  const before = unsourced(first, grave);
  expect(before.length).toBeGreaterThan(5);
  expect(before.some(({ note }) => note)).toBe(true);
  expect(unsourced(second, grave).map(({ note }) => note)).toStrictEqual(
    before.map(({ note = "" }) =>
      `To fill in: whether it is so of Danio novus as of Danio rerio. ${note}`.trim(),
    ),
  );
  expect(told).toContain(`${unsourced(second, /./).length} lines that no source says are of Danio rerio`);

  const asked = async () =>
    textOf(await check(root, "danio-novus")).match(/a question of the new file/g)?.length;
  expect(await asked()).toBe(before.length + 1);
  write(file, read(file).replaceAll(/To fill in: whether [^"]*/g, "Read again."));
  expect(await asked()).toBe(1);
});

test("a law that names what was one species names both after it is two", async () => {
  const { root, read, write } = project();
  const law = "data/legal/us-alabama.json";
  write(law, read(law).replace('"Clarias"', '"Danio rerio"'));
  expect(textOf(await split(root, "danio-rerio", "Danio novus"))).toContain(`${law} named both`);
  expect(json(read(law)).listings[0].taxa).toEqual(expect.arrayContaining(["Danio rerio", "Danio novus"]));
});
