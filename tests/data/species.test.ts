import { spawnSync } from "node:child_process";
import { expect, test } from "vitest";
import { root } from "../../data/files";

/** What the command prints, and whether it failed. */
function run(...words: readonly string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ["--import", "tsx", "data/species.ts", ...words],
    {
      cwd: root,
      encoding: "utf8",
    },
  );
  return { failed: status !== 0, told: (stdout + stderr).trim() };
}

test.each([[["Danio rerio"]], [["Danio", "rerio"]]])(
  "a name is one, with quotes and without: %j",
  (words) => {
    const known = "Danio rerio has a record: data/species/danio-rerio.json";
    expect(run("new", ...words)).toStrictEqual({ failed: true, told: known });
  },
);

test("half a name is refused", () => {
  const { failed, told } = run("new", "Danio");
  expect(failed).toBe(true);
  expect(told).toContain('such as "Danio rerio", found "Danio"');
});
