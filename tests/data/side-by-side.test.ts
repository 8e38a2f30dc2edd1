import { copyFileSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, onTestFinished, test } from "vitest";
import { check } from "../../data/commands/check";
import { compile } from "../../data/modules/compiling";
import { root as here } from "../../data/reading/files";
import { format } from "../../data/writing/formatting";
import { project, textOf } from "./project";
import { gitIn, repository } from "./repository";

/** A repository of a few species on main. */
function catalog() {
  const { root, read, write, species } = project();
  copyFileSync(join(here, ".gitattributes"), join(root, ".gitattributes"));
  const commit = repository(root);
  commit("First");
  const git = gitIn(root);
  return {
    root,
    read,
    write,
    commit,
    git,
    species,
    branch: (name: string) => git("switch", "--quiet", "-c", name, "main"),
  };
}

const letters = ["alba", "bella", "clara", "dura", "elegans", "fusca", "grata", "hirta", "ignea", "lata"];

/** Brings a species as a contributor would: a record, its source, and the line of a family that is new. */
async function bring({ root, read, write }: ReturnType<typeof catalog>, epithet: string) {
  const record = JSON.parse(read("data/species/danio-choprae.json"));
  const { synonyms, ...taxonomy } = record.taxonomy;
  const family = `${epithet[0]?.toUpperCase()}${epithet.slice(1)}danionidae`;
  const { reproduction, identifiers, forms, ...kept } = record;
  const paper = JSON.parse(read("data/sources/yanar-2019.json"));
  const source = { ...paper, id: `author-${epithet}`, DOI: `10.5555/${epithet}` };
  const species = {
    ...kept,
    id: `danio-${epithet}`,
    taxonomy: { ...taxonomy, name: `Danio ${epithet}`, family },
    names: { en: [`${epithet} danio`] },
    sources: Object.fromEntries(
      Object.entries(record.sources as Record<string, { cite: string }>).map(([key, { cite }], index) => [
        key,
        { cite: index === 0 ? source.id : cite, at: "page 3" },
      ]),
    ),
    ...(reproduction?.mode && { reproduction: { mode: reproduction.mode } }),
  };
  write(`data/species/danio-${epithet}.json`, JSON.stringify(species));
  write(`data/sources/${source.id}.json`, `${JSON.stringify(source, null, 2)}\n`);
  write("data/families.csv", `${read("data/families.csv")}${family},Cypriniformes\n`);
  await format(root);
}

test.each([2, 10])(
  "%i branches with a species each merge without a conflict, and stay green",
  async (count) => {
    const here = catalog();
    const brought = letters.slice(0, count);
    for (const epithet of brought) {
      here.branch(epithet);
      await bring(here, epithet);
      expect(textOf(await check(here.root, `danio-${epithet}`))).toBe(
        `data/species/danio-${epithet}.json: 0 problems.`,
      );
      here.commit(`Add ${epithet}`);
    }
    here.git("switch", "--quiet", "main");
    for (const epithet of brought) here.git("merge", "--quiet", "--no-edit", epithet);
    expect(textOf(await check(here.root))).toMatch(/: 0 problems\.$/);
    expect(await compile(here.root)).toBe(here.species + count);
  },
);

test("two corrections of one record, in traits that do not touch, merge", async () => {
  const here = catalog();
  const file = "data/species/danio-rerio.json";
  const corrections = [
    ['"greatest", "measure": "TL" }', '"greatest", "measure": "TL", "note": "A large female." }'],
    ['"value": "scatters-eggs" }', '"value": "scatters-eggs", "note": "At dawn." }'],
  ] as const;
  for (const [index, [from, to]] of corrections.entries()) {
    here.branch(`correction-${index}`);
    here.write(file, here.read(file).replace(from, to));
    here.commit("Correct");
  }
  here.git("switch", "--quiet", "main");
  for (const index of corrections.keys()) here.git("merge", "--quiet", "--no-edit", `correction-${index}`);
  for (const [, to] of corrections) expect(here.read(file)).toContain(to);
  expect(textOf(await check(here.root))).toMatch(/: 0 problems\.$/);
});

test("two branches that bring one species under two names are told of each other", async () => {
  const here = catalog();
  for (const epithet of ["alba", "bella"]) {
    here.branch(epithet);
    await bring(here, epithet);
    const file = `data/species/danio-${epithet}.json`;
    here.write(file, here.read(file).replace(`${epithet} danio`, "snow danio"));
    here.commit(`Add ${epithet}`);
  }
  here.git("switch", "--quiet", "main");
  for (const epithet of ["alba", "bella"]) here.git("merge", "--quiet", "--no-edit", epithet);
  expect(textOf(await check(here.root, "danio-alba"))).toContain(
    'the English name "snow danio" stands in data/species/danio-bella.json too',
  );
});

test("an id that a branch drops is missed, until a file forwards it", async () => {
  const here = catalog();
  here.branch("rename");
  here.git("mv", "data/species/danio-rerio.json", "data/species/danio-nova.json");
  expect(textOf(await check(here.root))).toContain("danio-rerio leads nowhere any more");
  here.write(
    "data/moved/danio-rerio.json",
    '{ "$schema": "../schemas/moved.schema.json", "id": "danio-rerio", "to": "danio-nova", "why": "A test." }',
  );
  expect(textOf(await check(here.root))).not.toContain("leads nowhere any more");
});

/** A clone of a repository, gone when the test is over. */
function cloneOf(root: string, ...options: readonly string[]): string {
  const clone = mkdtempSync(join(tmpdir(), "vivary-clone-"));
  onTestFinished(() => rmSync(clone, { recursive: true }));
  gitIn(root)("clone", "--quiet", ...options, root, clone);
  return clone;
}

test("it is missed in a clone too that has no main of its own, as forges make them", async () => {
  const { root, branch, git, commit } = catalog();
  branch("rename");
  git("rm", "--quiet", "data/moved/barbus-tetrazona.json");
  commit("Drop it");
  const clone = cloneOf(root, "--branch=rename");
  expect(textOf(await check(clone))).toContain("barbus-tetrazona leads nowhere any more");
});

test("a clone that would change the ends of lines is in order all the same", async () => {
  const { root } = catalog();
  const clone = cloneOf(root, "--config", "core.autocrlf=true");
  expect(readFileSync(join(clone, "data/species/danio-rerio.json"), "utf8")).not.toContain("\r");
  expect(textOf(await check(clone))).toMatch(/: 0 problems\.$/);
});
