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

test("a name of several words is one to every command", () => {
  const told = "No record is called no such fish.";
  for (const command of ["show", "page", "wanted"])
    expect(run(command, "no", "such", "fish"), command).toStrictEqual({ failed: true, told });
  expect(run("check", "no", "such", "fish").told).toBe("data has no file of the name no such fish.");
  expect(run("rename", "no such fish", "Danio novus")).toStrictEqual({ failed: true, told });
  expect(run("split", "no such fish", "Danio novus")).toStrictEqual({ failed: true, told });
});
