import { readdirSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { root } from "../data/reading/files";
import { thorough } from "./thorough";

/** The patterns that one with alternatives in braces stands for. */
function alternatives(pattern: string): readonly string[] {
  const [, before = "", inner = "", after = ""] = /^(.*?)\{([^}]*)\}(.*)$/.exec(pattern) ?? [];
  return inner ? inner.split(",").flatMap((one) => alternatives(before + one + after)) : [pattern];
}

/** What a pattern matches, of `**` as any folders and `*` as any name. */
const asRegExp = (pattern: string) =>
  new RegExp(
    `^${pattern
      .replaceAll(".", "\\.")
      .replaceAll("**/", "(?:.+/)?")
      .replaceAll(/(?<!\.)\*/g, "[^/]*")}$`,
  );

test("every pattern of tests that take long matches a file", () => {
  const files = readdirSync(join(root, "tests"), { recursive: true, encoding: "utf8" }).map(
    (path) => `tests/${path.replaceAll("\\", "/")}`,
  );
  // What examples are made into is not there before `npm run types`.
  const all = thorough.flatMap(alternatives).filter((pattern) => !pattern.startsWith("tests/generated/"));
  expect(all.length).toBeGreaterThan(thorough.length);
  expect(all.filter((pattern) => !files.some((file) => asRegExp(pattern).test(file)))).toEqual([]);
});
