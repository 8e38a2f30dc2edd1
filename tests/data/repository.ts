import { execFileSync } from "node:child_process";

/** Makes a folder a repository of its own, and gives what commits all that is in it. */
export function repository(folder: string): (message: string) => void {
  const git = (...args: readonly string[]) =>
    execFileSync("git", ["-c", "user.name=Test", "-c", "user.email=test@example.org", ...args], {
      cwd: folder,
      stdio: "ignore",
    });
  git("init", "--initial-branch=main");
  return (message) => {
    git("add", "--all");
    git("commit", "--allow-empty", `--message=${message}`);
  };
}
