import { expect, test } from "vitest";
import { page } from "../../../data/commands/page";
import { project, textOf } from "../project";

test("the page of a species is the one that readers get, with its company, forms and sources", async () => {
  const { root } = project();
  const said = textOf(await page(root, "tiger barb"));
  expect(said).toMatch(/^# Tiger barb\n/);
  expect(said).toMatch(/\n## Forms bred from it\n[^#]*- Long-fin tiger barb: /);
  expect(said).toMatch(/\n## Sources\n[^#]*- Yanar, /);
  expect(said).toContain("zebra danio");
  expect(await page(root, "unicorn")).toMatchObject({ failed: true });
});

test("a source of which nothing was compiled yet is on it", async () => {
  const { root, read, write } = project();
  const file = "data/species/danio-rerio.json";
  const source = {
    ...JSON.parse(read("data/sources/yanar-2019.json")),
    id: "nobody-2026",
    title: "New danios",
  };
  write("data/sources/nobody-2026.json", JSON.stringify(source));
  write(file, read(file).replaceAll('"cite": "usgs-nas"', '"cite": "nobody-2026"'));
  expect(textOf(await page(root, "danio-rerio"))).toContain("New danios");
});

test("laws that name the species are on it, of every file that is well formed", async () => {
  const { root, read, write } = project();
  const law = "data/legal/us-alabama.json";
  write(law, read(law).replace('"Clarias"', '"Danio rerio"'));
  write("data/legal/us-arkansas.json", "{}");
  expect(textOf(await page(root, "danio-rerio"))).toContain("Alabama");
});

test("a record that is broken is said to be so, with what to do", async () => {
  const { root, write, read } = project();
  const file = "data/species/danio-rerio.json";
  write(file, read(file).replace('"kind": "fish"', '"kind": "fihs"'));
  expect(textOf(await page(root, "zebra danio"))).toBe(
    `${file} is not well formed: npm run species check danio-rerio`,
  );
});
