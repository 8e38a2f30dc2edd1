import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const files = (folder: string) =>
  readdirSync(new URL(folder, import.meta.url)).map((name) => new URL(`${folder}/${name}`, import.meta.url));

test.each(["pair", "plan"])("every rule on a %s has a test among those of rules", (way) => {
  const texts = files(`./${way}`).map((file) => readFileSync(file, "utf8"));
  const rules = files(`../../../src/compatibility/rules/${way}`).map(
    ({ pathname }) => pathname.split("/").at(-1)?.replace(/\.ts$/, "") ?? "",
  );
  expect(rules.length).toBeGreaterThan(10);
  expect(rules.filter((id) => !texts.some((text) => text.includes(`/rules/${way}/${id}"`)))).toEqual([]);
});
