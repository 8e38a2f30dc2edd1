import { expect, test } from "vitest";
import { checkout } from "./checkout";

test("a species becomes a module of the catalog and one of the evidence, and an id that moved forwards to it", () => {
  const project = checkout();
  const floors = ["src/catalog", "src/evidence"];
  for (const floor of floors) project.write(`${floor}/species/stale-species.ts`, "");
  expect(project.run("compile.mjs")).toMatchObject({ status: 0 });
  for (const floor of floors) {
    expect(project.read(`${floor}/species/danio-rerio.ts`)).toContain("export default species;");
    expect(project.read(`${floor}/species/barbus-tetrazona.ts`)).toBe(
      'export { default } from "./puntigrus-tetrazona.js";\n',
    );
    expect(() => project.read(`${floor}/species/stale-species.ts`)).toThrow("ENOENT");
  }
});

test("a broken record stops the build with its file and every problem", () => {
  const project = checkout();
  project.write("data/species/danio-rerio.json", "{}");
  const { status, said } = project.run("compile.mjs");
  expect(status).toBe(1);
  expect(said).toContain("data/species/danio-rerio.json is no species record");
  for (const field of ["id", "taxonomy", "names", "sources"]) expect(said).toContain(`${field}: expected`);
});
