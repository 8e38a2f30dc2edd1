// Whether the changesets say what users will see of what changed: since the last release, and on a branch since it left main.
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import parseChangeset from "@changesets/parse";
import { fieldOf } from "../../data/reading/fields";
import { baseOf, changedSince, git, gitOrNothing } from "../../data/reading/history";
import { namesSince } from "./names";

/** What users see of the package. */
const seen = ["src", "data/species", "data/moved", "data/legal", "data/standards", "tests/surface"];

/** What is wrong with the changesets of a checkout, a sentence each; nothing where its history is not at hand. */
export async function problemsOfChanges(root: string): Promise<readonly string[]> {
  if (!(await hasHistory(root))) return [];
  const release = await lastRelease(root);
  const isOut = release !== undefined;
  const fork = await forkOf(root, release);
  const told = fork ? await problemsSince(root, fork, await changesetsSince(root, fork), isOut) : [];
  if (told.length > 0) return told;
  return problemsSince(root, release ?? (await firstCommit(root)), await changesets(root), isOut);
}

/**
 * What some changesets leave unsaid of what changed since a commit. What nobody has got yet cannot be taken away: `isOut` is
 * whether there was a release.
 */
async function problemsSince(
  root: string,
  commit: string,
  files: readonly string[],
  isOut: boolean,
): Promise<readonly string[]> {
  const changed = await changedSince(root, commit, ...seen);
  if (changed.length === 0) return [];
  const bumps = await bumpsIn(root, files);
  const isTold = (bump: string) => bumps.includes(bump) || bumps.includes("major");
  const { gone, added } = await namesSince(root, commit);
  const breaking = await breakingBump(root);
  if (isOut && gone.length > 0 && !isTold(breaking)) {
    return gone.map((what) => `${what} is gone, and no changeset says ${breaking}.`);
  }
  if (added.length > 0 && !isTold("minor")) {
    return added.map((what) => `${what} is new, and no changeset says minor.`);
  }
  return files.length > 0
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
  return (await isWithin(root, tagged, logged)) ? logged : tagged;
}

/** Where a branch left main, unless it is main itself, or a release came after. */
async function forkOf(root: string, release: string | undefined): Promise<string | undefined> {
  const base = await baseOf(root);
  if (base === undefined || (await isMain(root, base))) return;
  return release === undefined || (await isWithin(root, release, base)) ? base : undefined;
}

/** Whether what is checked out is main, by its name or, where it has none, since it adds nothing to main. */
async function isMain(root: string, base: string): Promise<boolean> {
  const branch = await gitOrNothing(root, "symbolic-ref", "--quiet", "--short", "HEAD");
  return branch === "main" || (branch === undefined && base === (await git(root, "rev-parse", "HEAD")));
}

/** Whether a commit is another one or came before it. */
const isWithin = async (root: string, earlier: string, later: string): Promise<boolean> =>
  (await gitOrNothing(root, "merge-base", "--is-ancestor", earlier, later)) !== undefined;

async function firstCommit(root: string): Promise<string> {
  return (await git(root, "rev-list", "--max-parents=0", "HEAD")).split("\n").at(-1) ?? "HEAD";
}

/** What a changeset says where something goes: before 1.0.0 a minor version may break (Semantic Versioning 2.0.0, 4). */
async function breakingBump(root: string): Promise<"minor" | "major"> {
  const version = fieldOf(JSON.parse(await readFile(join(root, "package.json"), "utf8")), "version");
  return String(version).startsWith("0.") ? "minor" : "major";
}

/** The files of the changesets that wait. */
const changesets = async (root: string): Promise<readonly string[]> =>
  (await readdir(join(root, ".changeset")))
    .filter((name) => name.endsWith(".md") && name !== "README.md")
    .map((name) => `.changeset/${name}`);

/** Of these, those that came or changed since a commit. */
async function changesetsSince(root: string, commit: string): Promise<readonly string[]> {
  const changed = new Set(await changedSince(root, commit, ".changeset"));
  return (await changesets(root)).filter((file) => changed.has(file));
}

/** The kinds of version that changesets ask for; an empty one asks for none. */
async function bumpsIn(root: string, files: readonly string[]): Promise<readonly string[]> {
  const texts = await Promise.all(files.map((file) => readFile(join(root, file), "utf8")));
  return texts.flatMap((text) => parseChangeset(text).releases.map(({ type }) => type));
}
