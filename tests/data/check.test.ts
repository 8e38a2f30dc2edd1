import { expect, test } from "vitest";
import { checkout } from "./checkout";

const danio = "data/species/danio-rerio.json";
const schema = "data/species.schema.json";

test("a schema that is missing is stale like an old one, and --write mends it", () => {
  const project = checkout();
  project.run("check.mjs", "--write");
  const current = project.read(schema);
  project.remove(schema);
  const stale = { status: 1, said: expect.stringContaining(`${schema} is stale: npm run format`) };
  expect(project.run("check.mjs")).toMatchObject(stale);
  project.write(schema, `${current} `);
  expect(project.run("check.mjs")).toMatchObject(stale);
  project.run("check.mjs", "--write");
  expect(project.read(schema)).toBe(current);
});

test("what is wrong between records is told all at once", () => {
  const project = checkout();
  const record = JSON.parse(project.read(danio));
  const { living, ...social } = record.social;
  const interbreedsWith = [{ by: "common-practice", value: "tanichthys-albonubes" }];
  const changed = { ...record, social, reproduction: { ...record.reproduction, interbreedsWith } };
  changed.sources.usgs = { cite: "a-lost-book" };
  changed.care.rehoming = [{ by: "usgs", value: "Shoals may join." }];
  project.write(danio, JSON.stringify(changed));
  project.write("data/species/zebra.json", JSON.stringify(record));
  project.write("data/sources/a-spare-book.json", JSON.stringify({ id: "another-book" }));
  const { status, said } = project.run("check.mjs", "--write");
  expect(status).toBe(1);
  for (const problem of [
    "data/species/zebra.json: id is danio-rerio",
    "data/sources/a-spare-book.json: id is another-book",
    "data/sources/a-lost-book.json is cited and missing",
    "data/sources/a-spare-book.json is cited by no record",
    `${danio}: interbreeds with tanichthys-albonubes, whose record does not name danio-rerio`,
    `${danio}: social.living is essential and unknown`,
  ]) {
    expect(said).toContain(problem);
  }
});

test("files that hold no record are told as such, and do not keep the others from being checked", () => {
  const project = checkout();
  const held = [
    "null",
    "[]",
    "7",
    '{ "sources": { "book": null }, "reproduction": { "interbreedsWith": "none" } }',
  ];
  held.forEach((text, index) => {
    project.write(`data/species/unicorn-${index}.json`, text);
  });
  project.remove("data/sources/usgs-nas.json");
  const { status, said } = project.run("check.mjs", "--write");
  expect(status).toBe(1);
  for (const index of held.keys()) expect(said).toContain(`unicorn-${index}.json: `);
  expect(said).toContain("data/sources/usgs-nas.json is cited and missing");
});

test("a file that is no JSON is named", () => {
  const project = checkout();
  project.write("data/species/unicorn.json", "{ id: 1 }");
  expect(project.run("check.mjs")).toMatchObject({
    status: 1,
    said: expect.stringContaining("data/species/unicorn.json: "),
  });
});
