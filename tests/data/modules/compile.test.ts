import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { compile } from "../../../data/modules/compiling";
import { folders } from "../../../data/reading/files";
import { project } from "../project";

const floors = ["src/catalog", "src/evidence"];

test("a species becomes a module of the catalog and one of the evidence, and an id that moved forwards to it", async () => {
  const { root, species, read, write } = project();
  for (const floor of floors) write(`${floor}/species/stale-species.ts`, "");
  expect(await compile(root)).toBe(species);
  for (const floor of floors) {
    expect(read(`${floor}/species/danio-rerio.ts`)).toContain("export default species;");
    expect(read(`${floor}/species/barbus-tetrazona.ts`)).toBe(
      'export { default } from "./puntigrus-tetrazona.js";\n',
    );
    expect(() => read(`${floor}/species/stale-species.ts`)).toThrow("ENOENT");
  }
});

test("a broken record stops the build with its file and every problem, before anything is written", async () => {
  const { root, write } = project();
  write("data/species/danio-rerio.json", "{}");
  const said = await compile(root).catch((error: Error) => error.message);
  expect(said).toContain("data/species/danio-rerio.json is not what species holds");
  for (const field of ["id", "taxonomy", "names", "sources"]) expect(said).toContain(`${field}: expected`);
  expect(() => readFileSync(join(root, "src/catalog/generated.ts"))).toThrow("ENOENT");
});

test.each(folders)("a file of %s that is no JSON stops the build", async (folder) => {
  const { root, write } = project();
  write(`data/${folder}/a-file.json`, "{");
  await expect(compile(root)).rejects.toThrow(`data/${folder}/a-file.json is not what ${folder} holds`);
});
