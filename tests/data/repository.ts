import { execFileSync } from "node:child_process";

/** Runs git in a folder, as somebody. */
export const gitIn =
  (folder: string) =>
  (...args: readonly string[]): string =>
    execFileSync("git", ["-c", "user.name=Test", "-c", "user.email=test@example.org", ...args], {
      cwd: folder,
      encoding: "utf8",
      stdio: ["ignore", "pipe", "ignore"],
    });

/** Makes a folder a repository of its own, and gives what commits all that is in it. */
export function repository(folder: string): (message: string) => void {
  const git = gitIn(folder);
  git("init", "--initial-branch=main");
  return (message) => {
    git("add", "--all");
    git("commit", "--allow-empty", `--message=${message}`);
  };
}
