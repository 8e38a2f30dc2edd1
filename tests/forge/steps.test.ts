// Runs the scripts of workflows as the forge would, with its own shell, on a repository of a few species.
import { execFileSync } from "node:child_process";
import { chmodSync, cpSync, existsSync, mkdirSync, readFileSync, rmSync, symlinkSync } from "node:fs";
import { delimiter, join } from "node:path";
import { unzipSync } from "fflate";
import { describe, expect, test } from "vitest";
import { root as here } from "../../data/reading/files";
import { version } from "../../package.json";
import { project } from "../data/project";
import { gitIn, repository } from "../data/repository";
import { scriptOf } from "./workflows";

/** What the programs of the project need beside the data of a few species, as a fresh clone has it. */
const programs = ["data", "src", "package.json", "tsconfig.json", "NOTICE.md", "CITATION.cff", "LICENSE"];
const isMade = (path: string) =>
  /generated\.ts$|src\/(catalog|evidence)\/species\/|data\/.*\.json$|families\.csv$/.test(path);

/** A clone of the project with a few species. */
function clone() {
  const { root, read, write } = project();
  for (const part of programs)
    cpSync(join(here, part), join(root, part), { recursive: true, filter: (path) => !isMade(path) });
  symlinkSync(join(here, "node_modules"), join(root, "node_modules"));
  write(".gitignore", readFileSync(join(here, ".gitignore"), "utf8"));
  return { root, read, write };
}

/** A folder where nothing but a script is, with a program in place of the forge's that writes down how it was called. */
function desk() {
  const { root, read, write } = project();
  mkdirSync(join(root, "bin"));
  write("bin/gh", `#!/bin/sh\nprintf '%s\\n' "$@" >> called.txt\ncase "$1" in api) echo 7 ;; esac\n`);
  chmodSync(join(root, "bin/gh"), 0o755);
  const env = { PATH: `${join(root, "bin")}${delimiter}${process.env.PATH}` };
  return { root, read, write, env };
}

/** Runs a script as the forge does where a step names no shell. */
const run = (root: string, script: string, env: Readonly<Record<string, string>> = {}) =>
  execFileSync("bash", ["-e", "-c", script], {
    cwd: root,
    encoding: "utf8",
    env: { ...process.env, NO_COLOR: "1", ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });

describe("the flips of a pull request", () => {
  test("are told from its merge alone", () => {
    const { root, read, write } = clone();
    const commit = repository(root);
    commit("Main");
    const betta = "data/species/betta-splendens.json";
    const record = JSON.parse(read(betta));
    record.predation.eats = [
      { by: "common-practice", value: { prey: "fish", greatest: 5 }, note: "A test." },
    ];
    write(betta, JSON.stringify(record));
    commit("The merge");
    run(root, scriptOf("flips.yml", "Tell the flips"));
    expect(read("flips.txt")).toMatch(/^[^\n]+ → unsuitable; now blocking predation\n/);
    expect(read("flips.txt")).toMatch(/\n {2}predation: .*\n(?: {4}.*\n)* {4}predation\.eats: /);
    expect(read("flips.txt")).toMatch(/\n\d+ of 12 verdicts differ\.\n$/);
  });

  const comment = scriptOf("flips-comment.yml", "Write the comment");
  const pull = { GH_REPO: "keepers/fishes", HEAD: "keeper:a-branch", COMMIT: "0".repeat(40) };

  test("stand under it, counted first, in lines that a phone shows", () => {
    const { root, read, write, env } = desk();
    const line = "Siamese fighting fish with neon tetra: suitable → unsuitable; now blocking predation";
    write("told/flips.txt", `${`${line}\n`.repeat(3)}3 of 12 verdicts differ.\n1 are new: 1 suitable.\n`);
    run(root, comment, { ...env, ...pull });
    const [, block = ""] = read("comment.md").split("```text\n");
    expect(block.split("\n").slice(0, 2)).toStrictEqual([
      "3 of 12 verdicts differ.",
      "1 are new: 1 suitable.",
    ]);
    for (const told of block.split("\n")) expect(told.length).toBeLessThanOrEqual(44);
    expect(block.replaceAll("\n", "")).toContain(line);
    const called = read("called.txt").trim().split("\n");
    expect(called).toContain("head=keeper:a-branch");
    expect(called.slice(-7)).toStrictEqual(
      "pr comment 7 --body-file comment.md --edit-last --create-if-none".split(" "),
    );
  });

  test("are folded away where they are many, but for the gravest", () => {
    const { root, read, write, env } = desk();
    const lines = Array.from({ length: 100 }, (_, index) => `pair ${index}: suitable → conditional\n`);
    write("told/flips.txt", `${lines.join("")}100 of 171 verdicts differ.\n`);
    run(root, comment, { ...env, ...pull });
    const [open = "", folded = ""] = read("comment.md").split("<details>");
    expect(open).toContain("100 of 171 verdicts differ.");
    expect(open).toContain(lines[39]);
    expect(open).not.toContain(lines[40]);
    expect(folded).toContain(lines[40]);
    expect(folded).toContain(lines[99]);
  });

  test("are taken from a file, never from where it leads", () => {
    const { root, write, env } = desk();
    const fetched = scriptOf("flips-comment.yml", "Fetch what was told");
    expect(() => run(root, fetched, { ...env, RUN: "1" })).toThrow("Command failed");
    write("told/flips.txt", "");
    run(root, fetched, { ...env, RUN: "1" });
    rmSync(join(root, "told/flips.txt"));
    symlinkSync(join(root, "data/families.csv"), join(root, "told/flips.txt"));
    expect(() => run(root, fetched, { ...env, RUN: "1" })).toThrow("Command failed");
  });

  test.each([
    [
      "the end of the block",
      "```\n@everyone [click](https://example.org)\n1 of 2 verdicts differ. ``` <b>\n",
    ],
    ["signs for a terminal", "\u001b[31mred\r1 of 2 verdicts differ.\u001b]0;title\u0007\n"],
    ["text without an end", "a".repeat(1_000_000)],
    ["signs that are cut in half", "\uFFFD".repeat(40_000)],
    ["nothing at all", ""],
  ])("cannot leave the block that quotes them, be it by %s", (_, text) => {
    const { root, read, write, env } = desk();
    write("told/flips.txt", text);
    run(root, comment, { ...env, ...pull });
    const written = read("comment.md");
    expect(written).toMatch(
      /^Verdicts [^`<]+\n```text\n[^`]*\n```\n(\n<details><summary>The rest<\/summary>\n\n```text\n[^`]*\n```\n\n<\/details>\n)?$/,
    );
    expect(written).not.toMatch(/[^\P{Cc}\n]/u);
    expect(written.length).toBeLessThan(65_536);
  });
});

describe("a release", () => {
  const hold = scriptOf("release.yml", "Hold the tag to the version, and to main");

  test("goes by a tag that the package says too, of a commit of main", () => {
    const { root, write } = project();
    write("package.json", `{ "version": "1.2.3" }`);
    const commit = repository(root);
    commit("First");
    const git = gitIn(root);
    git("update-ref", "refs/remotes/origin/main", "HEAD");
    run(root, hold, { GITHUB_REF_NAME: "v1.2.3" });
    expect(() => run(root, hold, { GITHUB_REF_NAME: "v1.2.4" })).toThrow("Command failed");
    commit("Beside main");
    expect(() => run(root, hold, { GITHUB_REF_NAME: "v1.2.3" })).toThrow("Command failed");
  });

  test("carries the tables, and a package that names its repository", () => {
    const { root, read } = clone();
    run(root, "npm run --silent compile");
    run(root, scriptOf("release.yml", "Write the tables"));
    for (const [name, file] of [
      ["data-package", "datapackage.json"],
      ["darwin-core-archive", "meta.xml"],
    ] as const) {
      const held = unzipSync(readFileSync(join(root, `release/vivary-${name}.zip`)));
      expect(Object.keys(held)).toStrictEqual(
        expect.arrayContaining([file, "NOTICE.md", "CITATION.cff", "LICENSE"]),
      );
    }
    run(root, scriptOf("release.yml", "Pack"), {
      GITHUB_SERVER_URL: "https://forge.example",
      GITHUB_REPOSITORY: "keepers/fishes",
    });
    expect(existsSync(join(root, `release/vivary-${version}.tgz`))).toBe(true);
    expect(JSON.parse(read("package.json")).repository).toStrictEqual({
      type: "git",
      url: "git+https://forge.example/keepers/fishes.git",
    });
  });

  test("is told in the words of its changelog, and is none without them", () => {
    const { root, read, write } = project();
    mkdirSync(join(root, "release"));
    const notes = scriptOf("release.yml", "Take the notes from the changelog");
    write(
      "CHANGELOG.md",
      "# vivary\n\n## 1.10.0\n\n### Minor Changes\n\n- A fish.\n\n## 1.1.0\n\n- Another.\n",
    );
    run(root, notes, { GITHUB_REF_NAME: "v1.10.0" });
    expect(read("release/notes.md").trim()).toBe("### Minor Changes\n\n- A fish.");
    run(root, notes, { GITHUB_REF_NAME: "v1.1.0" });
    expect(read("release/notes.md").trim()).toBe("- Another.");
    expect(() => run(root, notes, { GITHUB_REF_NAME: "v1.1" })).toThrow("Command failed");
  });

  test("holds package and tables, with these notes", () => {
    const { root, read, write, env } = desk();
    for (const file of ["vivary-1.2.3.tgz", "tables.zip", "notes.md"]) write(`release/${file}`, "");
    run(root, scriptOf("release.yml", "Attach package and tables"), { ...env, GITHUB_REF_NAME: "v1.2.3" });
    expect(read("called.txt").trim().split("\n")).toStrictEqual(
      "release create v1.2.3 release/vivary-1.2.3.tgz release/tables.zip --verify-tag --title v1.2.3 --notes-file release/notes.md".split(
        " ",
      ),
    );
  });
});
