import { expect, test } from "vitest";
import { check } from "../../../data/commands/check";
import { isStartable, startFile } from "../../../data/commands/new-file";
import { project, textOf } from "../project";

test("a source, an observation and a law are started, and every question is asked until it is answered", async () => {
  const { root, read } = project();
  const started = [
    ["source", "meyer-1997", "data/sources/meyer-1997.json", 4],
    ["observation", "rossi-2026", "data/sources/rossi-2026.json", 2],
    ["law", "atlantis", "data/legal/atlantis.json", 5],
  ] as const;
  for (const [what, id, path, questions] of started) {
    const answer = await startFile(root, what, id, { now: new Date("2026-03-01") });
    expect(answer.failed).toBe(false);
    expect(textOf(answer)).toContain(`${path} waits to be filled in.`);
    const told = textOf(await check(root, path));
    expect(told.match(/a question of the new file/g)).toHaveLength(questions);
  }
  expect(JSON.parse(read("data/sources/meyer-1997.json")).issued).toStrictEqual({ "date-parts": [[1997]] });
  expect(textOf(await check(root, "rossi-2026"))).toContain("animals is 0; expected at least 1.");
  const law = textOf(await check(root, "data/legal/atlantis.json"));
  expect(law).toContain("taxa is []; expected at least 1 entry.");
  expect(law).toMatch(/date is ""; expected a day, a month, a year or undated/);
});

test("what is there already is left as it is, and a name with other letters is none", async () => {
  const { root, read } = project();
  const before = read("data/sources/yanar-2019.json");
  expect(await startFile(root, "source", "yanar-2019")).toStrictEqual({
    lines: ["data/sources/yanar-2019.json is there already."],
    failed: true,
  });
  expect(read("data/sources/yanar-2019.json")).toBe(before);
  for (const id of ["", "../yanar", "Yanar 2019"])
    expect(await startFile(root, "source", id)).toMatchObject({ failed: true });
});

test("what may be started is a source, an observation or a law", () => {
  expect(["source", "observation", "law", "Danio", "toString"].map(isStartable)).toStrictEqual([
    true,
    true,
    true,
    false,
    false,
  ]);
});
