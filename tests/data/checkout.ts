import { spawnSync } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { onTestFinished } from "vitest";

const root = fileURLToPath(new URL("../../", import.meta.url));

/** A copy of the project's data and sources in a folder of its own, gone when the test is over. */
export function checkout() {
  const folder = mkdtempSync(join(tmpdir(), "vivary-"));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  for (const part of ["data", "src", "tests/judgements", "package.json"])
    cpSync(join(root, part), join(folder, part), { recursive: true });
  symlinkSync(join(root, "node_modules"), join(folder, "node_modules"));
  const path = (file: string) => join(folder, file);
  return {
    /** Runs a tool of `data` there. */
    run(tool: string, ...given: readonly string[]) {
      const { status, stdout, stderr } = spawnSync(process.execPath, [`data/${tool}`, ...given], {
        cwd: folder,
        encoding: "utf8",
      });
      return { status, said: stdout + stderr };
    },
    read: (file: string) => readFileSync(path(file), "utf8"),
    write: (file: string, text: string) => writeFileSync(path(file), text),
    remove: (file: string) => rmSync(path(file)),
  };
}
