// What git knows of the project.
import { execFile } from "node:child_process";
import { promisify } from "node:util";

const run = promisify(execFile);

/** What git answers in a folder, without the end of the last line. */
export async function git(folder: string, ...args: readonly string[]): Promise<string> {
  const { stdout } = await run("git", args, { cwd: folder, maxBuffer: 2 ** 30 });
  return stdout.trimEnd();
}

/** The same, or undefined where git refuses. */
export const gitOrNothing = (folder: string, ...args: readonly string[]): Promise<string | undefined> =>
  git(folder, ...args).catch(() => undefined);

const linesOf = (text: string): readonly string[] => text.split("\n").filter(Boolean);

/** The paths that differ between a commit and the working tree, new files among them. */
export async function changedSince(
  root: string,
  commit: string,
  ...paths: readonly string[]
): Promise<readonly string[]> {
  const [tracked, added] = await Promise.all([
    git(root, "diff", "--name-only", commit, "--", ...paths),
    git(root, "ls-files", "--others", "--exclude-standard", "--", ...paths),
  ]);
  return [...linesOf(tracked), ...linesOf(added)];
}

/** The commit that a change is compared with: what is given, else where the branch left main, here or at the origin, else the last one. */
export async function baseOf(root: string, given?: string): Promise<string | undefined> {
  if (given !== undefined) return gitOrNothing(root, "rev-parse", "--verify", "--quiet", `${given}^{commit}`);
  return (
    (await gitOrNothing(root, "merge-base", "main", "HEAD")) ??
    (await gitOrNothing(root, "merge-base", "origin/main", "HEAD")) ??
    gitOrNothing(root, "rev-parse", "--verify", "--quiet", "HEAD")
  );
}
