import { expect, test } from "vitest";
import { checkout } from "./checkout";

test("a species becomes an export of the catalog and of the evidence", () => {
  const project = checkout();
  const files = ["src/catalog/generated.ts", "src/evidence/generated.ts"];
  for (const file of files) project.write(file, "");
  expect(project.run("compile.mjs")).toMatchObject({ status: 0 });
  const [profiles, records] = files.map(project.read);
  expect(profiles).toContain("export const puntigrusTetrazona: SpeciesProfile =");
  expect(records).toContain("export const puntigrusTetrazona: SpeciesRecord =");
});

test("a broken record stops the build with its file and every problem", () => {
  const project = checkout();
  project.write("data/species/danio-rerio.json", "{}");
  const { status, said } = project.run("compile.mjs");
  expect(status).toBe(1);
  expect(said).toContain("data/species/danio-rerio.json is no species record");
  for (const field of ["id", "taxonomy", "names", "sources"]) expect(said).toContain(`${field}: expected`);
});
