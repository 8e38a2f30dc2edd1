import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { describe, expect, onTestFinished, test } from "vitest";
import { repository } from "../data/repository";
import { problemsOfChanges } from "./changes";

/** A small project with a history that ends in a release. */
function released(version = "1.0.0") {
  const root = mkdtempSync(join(tmpdir(), "vivary-release-"));
  onTestFinished(() => rmSync(root, { recursive: true }));
  const write = (file: string, text: string) => {
    mkdirSync(dirname(join(root, file)), { recursive: true });
    writeFileSync(join(root, file), text);
  };
  const remove = (file: string) => rmSync(join(root, file));
  const git = (...args: readonly string[]) => execFileSync("git", args, { cwd: root, stdio: "ignore" });
  const commit = repository(root);
  write("package.json", JSON.stringify({ version }));
  write(".changeset/config.json", "{}");
  write("src/index.ts", "export const one = 1;\n");
  write("tests/surface/root.txt", "interface Plan\n  readonly tank: Tank\nfunction judge: () => void\n");
  write("tests/surface/units.txt", "const one: 1\n");
  write("data/species/danio-rerio.json", '{ "forms": { "blue": {}, "veil": {} } }');
  write("data/species/betta-splendens.json", "{}");
  write("data/moved/brachydanio-rerio.json", '{ "to": "danio-rerio" }');
  commit("Before");
  write("CHANGELOG.md", `# ${version}\n`);
  commit("Release");
  return {
    root,
    write,
    remove,
    git,
    commit,
    move: (from: string, to: string) => renameSync(join(root, from), join(root, to)),
    changeset: (bump: string) =>
      write(`.changeset/a-${bump}.md`, `---\n"vivary": ${bump}\n---\n\nA change.\n`),
    problems: () => problemsOfChanges(root),
  };
}

type Project = ReturnType<typeof released>;

test("after a release there is nothing to say", async () => {
  expect(await released().problems()).toStrictEqual([]);
});

test.each([
  "src/index.ts",
  "src/new.ts",
  "data/species/danio-rerio.json",
  "data/legal/atlantis.json",
  "tests/surface/units.txt",
])("a change of %s needs a changeset, committed or not", async (file) => {
  const { write, commit, changeset, problems } = released();
  write(
    file,
    file.endsWith(".json") ? '{ "forms": { "blue": {}, "veil": {} }, "names": {} }' : "const one: 1 | 2\n",
  );
  const told = [`${file} changed (and 0 more), and no changeset waits: npm run changeset`];
  expect(await problems()).toStrictEqual(told);
  commit("A change");
  expect(await problems()).toStrictEqual(told);
  changeset("patch");
  expect(await problems()).toStrictEqual([]);
});

test("a change of what no user sees needs none", async () => {
  const { write, problems } = released();
  write("README.md", "# A title\n");
  write("tests/a.test.ts", "");
  expect(await problems()).toStrictEqual([]);
});

describe("what disappears needs a changeset that says major", () => {
  test.each<readonly [string, (project: Project) => void, string]>([
    [
      "an export",
      ({ write }) => write("tests/surface/units.txt", "const two: 2\n"),
      "The export one of units",
    ],
    [
      "a type",
      ({ write }) => write("tests/surface/root.txt", "function judge: () => void\n"),
      "The export Plan of root",
    ],
    ["a subpath", ({ remove }) => remove("tests/surface/units.txt"), "The export one of units"],
    [
      "a species",
      ({ remove }) => remove("data/species/betta-splendens.json"),
      "The id betta-splendens, which data/moved does not forward,",
    ],
    [
      "an id that forwarded",
      ({ remove }) => remove("data/moved/brachydanio-rerio.json"),
      "The id brachydanio-rerio, which data/moved does not forward,",
    ],
    [
      "a form",
      ({ write }) => write("data/species/danio-rerio.json", '{ "forms": { "blue": {} } }'),
      "The form danio-rerio, veil,",
    ],
    [
      "a form of a species that moved",
      ({ remove, write }) => {
        remove("data/species/danio-rerio.json");
        write("data/species/danio-novus.json", '{ "forms": { "blue": {} } }');
        write("data/moved/danio-rerio.json", '{ "to": "danio-novus" }');
        write("data/moved/brachydanio-rerio.json", '{ "to": "danio-novus" }');
      },
      "The form danio-rerio, veil,",
    ],
  ])("%s", async (_, change, what) => {
    const project = released();
    change(project);
    const told = [`${what} is gone, and no changeset says major.`];
    expect(await project.problems()).toStrictEqual(told);
    project.changeset("minor");
    project.commit("A change");
    expect(await project.problems()).toStrictEqual(told);
    project.changeset("major");
    expect(await project.problems()).toStrictEqual([]);
  });
});

describe("what is new needs a changeset that says minor", () => {
  test.each<readonly [string, (project: Project) => void, string]>([
    [
      "an export",
      ({ write }) => write("tests/surface/units.txt", "const one: 1\nconst two: 2\n"),
      "The export two of units",
    ],
    [
      "a species",
      ({ write }) => write("data/species/puntius-titteya.json", "{}"),
      "The species puntius-titteya",
    ],
    [
      "a form",
      ({ write }) => write("data/species/betta-splendens.json", '{ "forms": { "veil": {} } }'),
      "The form betta-splendens, veil,",
    ],
  ])("%s", async (_, change, what) => {
    const project = released();
    change(project);
    const told = [`${what} is new, and no changeset says minor.`];
    expect(await project.problems()).toStrictEqual(told);
    project.changeset("patch");
    project.commit("A change");
    expect(await project.problems()).toStrictEqual(told);
    project.changeset("minor");
    expect(await project.problems()).toStrictEqual([]);
  });
});

describe("a branch brings a changeset of its own, whatever else waits", () => {
  /** A branch of a main on which a changeset waits. */
  function branched() {
    const project = released();
    project.changeset("minor");
    project.commit("What waits");
    project.git("checkout", "-b", "a-branch");
    return project;
  }

  test("for a change that users see", async () => {
    const { write, commit, problems } = branched();
    write("README.md", "# A title\n");
    commit("What no user sees");
    expect(await problems()).toStrictEqual([]);
    write("src/index.ts", "export const one = 2;\n");
    const told = ["src/index.ts changed (and 0 more), and no changeset waits: npm run changeset"];
    expect(await problems()).toStrictEqual(told);
    commit("A change");
    expect(await problems()).toStrictEqual(told);
    write(".changeset/empty.md", "---\n---\n");
    expect(await problems()).toStrictEqual([]);
  });

  test("before anything is committed", async () => {
    const { write, problems } = branched();
    write("src/index.ts", "export const one = 2;\n");
    expect(await problems()).toHaveLength(1);
  });

  test("but main, which has what waits, and a checkout of it by its commit", async () => {
    const { write, git, commit, problems } = branched();
    git("checkout", "main");
    write("src/index.ts", "export const one = 2;\n");
    expect(await problems()).toStrictEqual([]);
    commit("A change");
    git("checkout", "--detach");
    expect(await problems()).toStrictEqual([]);
  });

  test("for a species", async () => {
    const { write, commit, changeset, problems } = branched();
    write("data/species/puntius-titteya.json", "{}");
    changeset("patch");
    commit("A species");
    expect(await problems()).toStrictEqual([
      "The species puntius-titteya is new, and no changeset says minor.",
    ]);
    write(".changeset/a-barb.md", '---\n"vivary": minor\n---\n\nA barb.\n');
    expect(await problems()).toStrictEqual([]);
  });

  test("but for the one that makes the release", async () => {
    const { write, remove, commit, problems } = branched();
    write("src/index.ts", "export const one = 2;\n");
    remove(".changeset/a-minor.md");
    write("CHANGELOG.md", "# 1.1.0\n");
    commit("Release");
    expect(await problems()).toStrictEqual([]);
  });
});

test("before 1.0.0 what disappears needs a changeset that says minor", async () => {
  const { remove, changeset, problems } = released("0.1.0");
  remove("tests/surface/units.txt");
  const told = ["The export one of units is gone, and no changeset says minor."];
  expect(await problems()).toStrictEqual(told);
  changeset("patch");
  expect(await problems()).toStrictEqual(told);
  changeset("minor");
  expect(await problems()).toStrictEqual([]);
});

test("a species that moves, and forwards, takes its forms with it: no major", async () => {
  const { move, write, changeset, problems } = released();
  move("data/species/danio-rerio.json", "data/species/danio-novus.json");
  write("data/moved/danio-rerio.json", '{ "to": "danio-novus" }');
  write("data/moved/brachydanio-rerio.json", '{ "to": "danio-novus" }');
  changeset("minor");
  expect(await problems()).toStrictEqual([]);
});

test("a tag of a version is a release too, and the later of the two counts", async () => {
  const { remove, changeset, commit, git, problems } = released();
  remove("data/species/betta-splendens.json");
  changeset("minor");
  commit("Without the betta");
  expect(await problems()).toHaveLength(1);
  git("tag", "v2.0.0");
  expect(await problems()).toStrictEqual([]);
});

test("before the first release nothing can disappear, but a changeset must wait", async () => {
  const { root, write, remove, git, commit, changeset, problems } = released();
  git("checkout", "--orphan", "anew");
  remove("CHANGELOG.md");
  commit("First");
  expect(await problems()).toStrictEqual([]);
  remove("data/species/betta-splendens.json");
  write("tests/surface/units.txt", "const two: 2\n");
  expect(await problems()).toHaveLength(1);
  changeset("minor");
  expect(await problemsOfChanges(root)).toStrictEqual([]);
});

test("a copy without its history is not judged", async () => {
  const { root, write, remove, problems } = released();
  rmSync(join(root, ".git"), { recursive: true });
  write("src/index.ts", "");
  remove("data/species/betta-splendens.json");
  expect(await problems()).toStrictEqual([]);
});
