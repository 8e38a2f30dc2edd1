import { copyFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { check } from "../../../data/commands/check";
import { root as here } from "../../../data/reading/files";
import { project, textOf } from "../project";

const source = "data/sources/yanar-2019.json";

test("a source whose lines stand otherwise is told, as the formatter will tell it later", async () => {
  const { root, read, write } = project();
  copyFileSync(join(here, ".biome.json"), join(root, ".biome.json"));
  expect(textOf(await check(root, "yanar-2019"))).toBe(`${source}: 0 problems.`);
  write(source, JSON.stringify(JSON.parse(read(source))));
  expect(textOf(await check(root, "yanar-2019"))).toContain(`${source}:1:1: its lines stand otherwise`);
  write(source, "{");
  expect(textOf(await check(root, "yanar-2019"))).not.toContain("its lines stand otherwise");
});
