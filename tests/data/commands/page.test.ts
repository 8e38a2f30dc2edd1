import { expect, test } from "vitest";
import { page } from "../../../data/commands/page";
import { project, textOf } from "../project";

test("the page of a species has its traits, and its sources each with where it was read", async () => {
  const { root } = project();
  const said = textOf(await page(root, "tiger barb"));
  expect(said).toContain("Puntigrus tetrazona");
  expect(said).toContain("## Sources");
  expect(said).toMatch(/- usgs: .+https?:\/\//);
  expect(await page(root, "unicorn")).toMatchObject({ failed: true });
});

test("a record that is broken is said to be so, with what to do", async () => {
  const { root, write, read } = project();
  const file = "data/species/danio-rerio.json";
  write(file, read(file).replace('"kind": "fish"', '"kind": "fihs"'));
  expect(textOf(await page(root, "zebra danio"))).toBe(
    `${file} is not well formed: npm run species check danio-rerio`,
  );
});
