// Tells which answers on pairs differ from those of another commit.
import { execFile } from "node:child_process";
import { mkdtemp, rm, symlink } from "node:fs/promises";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { promisify } from "node:util";
import { safeParseSpecies } from "vivary/schema";
import { resolve, type SpeciesProfile } from "vivary/species";
import { tellFlips } from "../flips/flips";
import { type Judgements, judgePairs } from "../flips/judge";
import { reasonsOf } from "../flips/reasons";
import { type Collection, readCollection } from "../reading/collection";
import { baseOf, changedSince, git, gitOrNothing } from "../reading/history";
import { type Answer, refused } from "./answer";

/** The program of a commit that prints its judgements, as {@link judgementsText} writes them. */
const program = ["data/species.ts", "judgements"];

export async function flips(root: string, given?: string): Promise<Answer> {
  const base = await baseOf(root, given);
  if (base === undefined)
    return refused(given ? `git knows no commit ${given}.` : "No commit is at hand to compare with.");
  const collection = await readCollection(root);
  if ((await changedSince(root, base, "src")).length === 0) {
    return { lines: await flipsOfRecords(root, base, collection), failed: false };
  }
  if ((await gitOrNothing(root, "cat-file", "-e", `${base}:${program[0]}`)) === undefined) {
    return refused(
      `${base.slice(0, 8)} has no program that tells its judgements, so nothing can be compared.`,
    );
  }
  const before = judgementsAt(root, base);
  const after = judgePairs(profilesOf(collection));
  return { lines: tellFlips(await before, after), failed: false };
}

/** What changed records do to the pairs in which they take part; the rules are those of the working tree. */
async function flipsOfRecords(
  root: string,
  base: string,
  collection: Collection,
): Promise<readonly string[]> {
  const profiles = profilesOf(collection);
  const files = await changedSince(root, base, "data/species");
  const ids = new Set(files.map((file) => basename(file, ".json")));
  const past = await Promise.all(files.map((file) => profileAt(root, base, file)));
  const before = [...profiles.filter(({ id }) => !ids.has(id)), ...past.flat()];
  const takesPart = (id: string) => ids.has(id);
  const changed = collection.records.flatMap(({ record }) => (ids.has(record.id) ? [record] : []));
  return tellFlips(judgePairs(before, takesPart), judgePairs(profiles, takesPart), (flip) =>
    reasonsOf(flip, changed, profiles),
  );
}

const profilesOf = ({ records }: Collection): readonly SpeciesProfile[] =>
  records.map(({ profile }) => profile);

/** The profile that a file gave in a commit, or none. */
export async function profileAt(
  root: string,
  commit: string,
  file: string,
): Promise<readonly SpeciesProfile[]> {
  const text = await gitOrNothing(root, "show", `${commit}:${file}`);
  const parsed = text === undefined ? undefined : safeParseSpecies(JSON.parse(text));
  return parsed?.success ? [resolve(parsed.record)] : [];
}

/** The program of a commit that writes its generated modules, without which its sources do not load. */
const compiler = "data/compile.ts";

/** What a commit answers by its own rules, on its own records. */
async function judgementsAt(root: string, commit: string): Promise<Judgements> {
  const folder = await mkdtemp(join(tmpdir(), "vivary-base-"));
  try {
    await git(root, "worktree", "add", "--detach", "--quiet", folder, commit);
    await symlink(join(root, "node_modules"), join(folder, "node_modules"), "junction");
    const run = (...words: readonly string[]) =>
      promisify(execFile)(process.execPath, ["--import", "tsx", ...words], {
        cwd: folder,
        maxBuffer: 2 ** 30,
      });
    if ((await gitOrNothing(root, "cat-file", "-e", `${commit}:${compiler}`)) !== undefined)
      await run(compiler);
    const { stdout } = await run(...program);
    return new Map(JSON.parse(stdout));
  } finally {
    await gitOrNothing(root, "worktree", "remove", "--force", folder);
    await rm(folder, { recursive: true, force: true });
  }
}

/** All judgements, as a program of another commit reads them. */
export const judgementsText = async (root: string): Promise<string> =>
  JSON.stringify([...judgePairs(profilesOf(await readCollection(root)))]);
