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

test("before a name of its own stands what is started, if it is no species", () => {
  expect(run("new", "source", "yanar-2019")).toStrictEqual({
    failed: true,
    told: "data/sources/yanar-2019.json is there already.",
  });
  expect(run("new", "--from", "no-such-issue.md")).toStrictEqual({
    failed: true,
    told: "There is no file no-such-issue.md.",
  });
});

test.each([
  [["show", "no", "such", "fish"]],
  [["page", "no", "such", "fish"]],
  [["wanted", "no", "such", "fish"]],
  [["rename", "no such fish", "Danio novus"]],
  [["split", "no such fish", "Danio novus"]],
])("a name of several words is one, and may be none: %j", (words) => {
  expect(run(...words)).toStrictEqual({ failed: true, told: "No record is called no such fish." });
});

test("a file that is checked may be none", () => {
  expect(run("check", "no", "such", "fish").told).toBe("data has no file of the name no such fish.");
});
