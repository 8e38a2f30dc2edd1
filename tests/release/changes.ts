// Whether the changesets that wait say what users will see of what changed since the last release.
import { existsSync } from "node:fs";
import { readdir, readFile } from "node:fs/promises";
import { basename, join } from "node:path";
import parseChangeset from "@changesets/parse";
import { fieldOf, fieldsOf } from "../../data/reading/fields";
import { changedSince, git, gitOrNothing } from "../../data/reading/history";

/** What users see of the package. */
const seen = ["src", "data/species", "data/moved", "data/legal", "data/standards", "tests/surface"];

/** What is wrong with the changesets of a checkout, a sentence each; nothing where its history is not at hand. */
export async function problemsOfChanges(root: string): Promise<readonly string[]> {
  if (!(await hasHistory(root))) return [];
  const release = await lastRelease(root);
  const bumps = await waitingBumps(root);
  const gone = release === undefined ? [] : await goneSince(root, release);
  const breaking = await breakingBump(root);
  if (gone.length > 0 && !bumps.includes(breaking) && !bumps.includes("major")) {
    return gone.map((what) => `${what} is gone, and no changeset says ${breaking}.`);
  }
  const since = release ?? (await firstCommit(root));
  const changed = await changedSince(root, since, ...seen);
  return changed.length === 0 || bumps.length > 0
    ? []
    : [`${changed[0]} changed (and ${changed.length - 1} more), and no changeset waits: npm run changeset`];
}

/** Whether the folder is the top of a repository with commits, none of them cut off. */
async function hasHistory(root: string): Promise<boolean> {
  if ((await gitOrNothing(root, "rev-parse", "--verify", "--quiet", "HEAD")) === undefined) return false;
  return (await git(root, "rev-parse", "--show-prefix", "--is-shallow-repository")).trim() === "false";
}

/** The last commit with a tag of a version or a change of the changelog, or none. */
async function lastRelease(root: string): Promise<string | undefined> {
  const tag = await gitOrNothing(root, "describe", "--tags", "--abbrev=0", "--match=v[0-9]*");
  const tagged = tag && (await git(root, "rev-list", "-1", tag));
  const logged = await git(root, "log", "-1", "--format=%H", "--", "CHANGELOG.md");
  if (!tagged || !logged) return tagged || logged || undefined;
  const logIsNewer = (await gitOrNothing(root, "merge-base", "--is-ancestor", tagged, logged)) !== undefined;
  return logIsNewer ? logged : tagged;
}

async function firstCommit(root: string): Promise<string> {
  return (await git(root, "rev-list", "--max-parents=0", "HEAD")).split("\n").at(-1) ?? "HEAD";
}

/** What a changeset says where something goes: before 1.0.0 a minor version may break (Semantic Versioning 2.0.0, 4). */
async function breakingBump(root: string): Promise<"minor" | "major"> {
  const version = fieldOf(JSON.parse(await readFile(join(root, "package.json"), "utf8")), "version");
  return String(version).startsWith("0.") ? "minor" : "major";
}

/** The kinds of version that the waiting changesets ask for. */
async function waitingBumps(root: string): Promise<readonly string[]> {
  const folder = join(root, ".changeset");
  const files = (await readdir(folder)).filter((name) => name.endsWith(".md") && name !== "README.md");
  const texts = await Promise.all(files.map((file) => readFile(join(folder, file), "utf8")));
  return texts.flatMap((text) => parseChangeset(text).releases.map(({ type }) => type));
}

/** Reads a file of the project, or undefined where there is none. */
type Reader = (path: string) => Promise<string | undefined>;

/** What a release had that users could name. */
interface Names {
  /** Exports, with their subpath. */
  readonly exports: ReadonlySet<string>;
  /** Ids of species, and those that forward to one. */
  readonly ids: ReadonlySet<string>;
  readonly moved: ReadonlyMap<string, string>;
  /** Forms, as `id form`. */
  readonly forms: ReadonlySet<string>;
}

/** What the release had and the working tree has not. */
async function goneSince(root: string, release: string): Promise<readonly string[]> {
  const changed = new Set(await changedSince(root, release, "tests/surface", "data"));
  const now: Reader = async (path) =>
    existsSync(join(root, path)) ? readFile(join(root, path), "utf8") : undefined;
  const then: Reader = (path) =>
    changed.has(path) ? gitOrNothing(root, "show", `${release}:${path}`) : now(path);
  const paths = (await git(root, "ls-tree", "-r", "--name-only", release, "data", "tests/surface")).split(
    "\n",
  );
  const current = [...new Set([...paths, ...changed])];
  const [before, after] = [await namesIn(paths, then), await namesIn(current, now)];
  const currentForm = (held: string) => {
    const [id = "", form = ""] = held.split(" ");
    return `${after.moved.get(id) ?? id} ${form}`;
  };
  return [
    ...[...before.exports].filter((name) => !after.exports.has(name)).map((name) => `The export ${name}`),
    ...[...before.ids]
      .filter((id) => !after.ids.has(id))
      .map((id) => `The id ${id}, which data/moved does not forward,`),
    ...[...before.forms]
      .filter((held) => after.ids.has(held.split(" ")[0] ?? "") && !after.forms.has(currentForm(held)))
      .map((held) => `The form ${held.replace(" ", ", ")},`),
  ];
}

async function namesIn(paths: readonly string[], read: Reader): Promise<Names> {
  const texts = await Promise.all(paths.map(async (path) => [path, await read(path)] as const));
  const under = (folder: string, extension: string) =>
    texts.flatMap(([path, text]) =>
      text !== undefined && path.startsWith(`${folder}/`) && path.endsWith(extension)
        ? [{ name: basename(path, extension), text }]
        : [],
    );
  const species = under("data/species", ".json");
  const moved = under("data/moved", ".json").map(
    ({ name, text }) => [name, String(fieldOf(JSON.parse(text), "to"))] as const,
  );
  return {
    exports: new Set(
      under("tests/surface", ".txt").flatMap(({ name, text }) =>
        exportsIn(text).map((held) => `${held} of ${name}`),
      ),
    ),
    ids: new Set([...species.map(({ name }) => name), ...moved.map(([id]) => id)]),
    moved: new Map(moved),
    forms: new Set(
      species.flatMap(({ name, text }) =>
        fieldsOf(fieldOf(JSON.parse(text), "forms")).map(([form]) => `${name} ${form}`),
      ),
    ),
  };
}

/** The names that a report of exports tells: whatever stands at the beginning of a line. */
const exportsIn = (report: string): readonly string[] =>
  [...report.matchAll(/^(?:(?:class|const|function|interface|type) )?([\w.]+)/gm)].flatMap(
    ([, name]) => name ?? [],
  );
