import { spawnSync } from "node:child_process";
import { afterAll, expect, test } from "vitest";
import type { Answer } from "../../data/commands/answer";
import { speciesCommands } from "../../data/commands/species-commands";
import { root as here } from "../../data/reading/files";
import { project } from "./project";

const { root } = project(afterAll);

/** What a command answers, and whether it failed. */
async function run(...words: readonly string[]) {
  const answers: Answer[] = [];
  const commands = speciesCommands(root, (answer) => answers.push(answer));
  await commands.parseAsync(words, { from: "user" });
  return {
    failed: answers.some(({ failed }) => failed),
    told: answers.flatMap(({ lines }) => lines).join("\n"),
  };
}

test("the program prints what a command answers, and fails where that does", () => {
  const program = ["--import", "tsx", "data/species.ts", "new", "Danio rerio"];
  const { status, stderr } = spawnSync(process.execPath, program, { cwd: here, encoding: "utf8" });
  expect(status).toBe(1);
  expect(stderr.trim()).toBe("Danio rerio has a record: data/species/danio-rerio.json");
});

test.each([[["Danio rerio"]], [["Danio", "rerio"]]])(
  "a name is one, with quotes and without: %j",
  async (words) => {
    const known = "Danio rerio has a record: data/species/danio-rerio.json";
    expect(await run("new", ...words)).toStrictEqual({ failed: true, told: known });
  },
);

test("half a name is refused", async () => {
  const { failed, told } = await run("new", "Danio");
  expect(failed).toBe(true);
  expect(told).toContain('such as "Danio rerio", found "Danio"');
});

test("before a name of its own stands what is started, if it is no species", async () => {
  expect(await run("new", "source", "yanar-2019")).toStrictEqual({
    failed: true,
    told: "data/sources/yanar-2019.json is there already.",
  });
  expect(await run("new", "--from", "no-such-issue.md")).toStrictEqual({
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
])("a name of several words is one, and may be none: %j", async (words) => {
  expect(await run(...words)).toStrictEqual({ failed: true, told: "No record is called no such fish." });
});

test("a file that is checked may be none", async () => {
  expect((await run("check", "no", "such", "fish")).told).toBe("data has no file of the name no such fish.");
});
