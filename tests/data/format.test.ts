import { expect, test } from "vitest";
import { checkout } from "./checkout";

test("a record out of order is named by --check and put in order without it", () => {
  const project = checkout();
  const file = "data/species/danio-rerio.json";
  const text = project.read(file);
  project.write(file, JSON.stringify(JSON.parse(text)));
  expect(project.run("format.mjs", "--check")).toMatchObject({
    status: 1,
    said: expect.stringContaining(file),
  });
  expect(project.run("format.mjs")).toMatchObject({
    status: 0,
    said: expect.stringContaining("1 records formatted"),
  });
  expect(project.read(file)).toBe(text);
  expect(project.run("format.mjs", "--check")).toMatchObject({ status: 0 });
});
