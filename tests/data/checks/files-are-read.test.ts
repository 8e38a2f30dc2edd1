import { expect, test } from "vitest";
import { check } from "../../../data/commands/check";
import { project, textOf } from "../project";

test.each([
  "data/species/danios/danio-kyathit.json",
  "data/species/danio-kyathit.JSON",
  "data/species/danio-kyathit.txt",
  "data/species/danio-kyathit",
  "data/danio-kyathit.json",
  "data/specie/danio-kyathit.json",
])("%s is told as a file that nothing reads", async (file) => {
  const { root, write } = project();
  write(file, "{}");
  expect(textOf(await check(root))).toContain(
    `${file}:1:1: is read by nothing; expected a name that ends in .json`,
  );
  expect(textOf(await check(root, "danio-kyathit"))).toBe(
    `data has no file of the name danio-kyathit. Nothing reads ${file}: its place or its ending is wrong.`,
  );
});

test("hidden files, and what lies beside the data, are left alone", async () => {
  const { root, write } = project();
  write("data/species/.DS_Store", "");
  write("data/checks/check.ts", "");
  expect(textOf(await check(root))).not.toContain("is read by nothing");
});
