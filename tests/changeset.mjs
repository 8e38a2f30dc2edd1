// Fails where src or data/species changed since the last release and no changeset waits. The last release is the last
// commit that touched CHANGELOG.md, else the first commit. A copy without its whole history is not checked.
import { execFileSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const watched = ["--", "src", "data/species"];

/** The lines that git answers. */
function git(...args) {
  const answer = execFileSync("git", args, {
    cwd: root,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "ignore"],
  });
  return answer.trimEnd().split("\n");
}

/** Whether this folder is the top of a repository with commits, none of them cut off. */
function hasHistory() {
  try {
    git("rev-parse", "--verify", "HEAD");
    return git("rev-parse", "--show-prefix", "--is-shallow-repository").join() === ",false";
  } catch {
    return false;
  }
}

function changedSinceRelease() {
  const [release] = git("log", "-1", "--format=%H", "--", "CHANGELOG.md");
  const base = release || git("rev-list", "--max-parents=0", "HEAD").at(-1);
  const tracked = git("diff", "--name-only", base, ...watched);
  const added = git("ls-files", "--others", "--exclude-standard", ...watched);
  return [...tracked, ...added].filter(Boolean);
}

const waiting = readdirSync(new URL("../.changeset", import.meta.url)).filter(
  (name) => name.endsWith(".md") && name !== "README.md",
);

if (!hasHistory()) console.log("Changesets are not checked: the history is not at hand.");
else if (waiting.length > 0) console.log(`Changesets waiting: ${waiting.join(", ")}.`);
else {
  const changed = changedSinceRelease();
  if (changed.length === 0) console.log("Nothing changed since the last release.");
  else {
    const [first, ...others] = changed;
    console.error(
      `No changeset waits, and since the last release ${first} changed (and ${others.length} more).`,
    );
    console.error("Say what changed: npm run changeset");
    process.exitCode = 1;
  }
}
