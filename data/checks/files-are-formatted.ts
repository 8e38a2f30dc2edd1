import { execFile } from "node:child_process";
import { access } from "node:fs/promises";
import { createRequire } from "node:module";
import { join } from "node:path";
import { promisify } from "node:util";
import { allFiles } from "../reading/collection";
import { fieldOf } from "../reading/fields";
import { folders } from "../reading/files";
import type { Check } from "./check";

/** The folders whose files are formatted like code. */
const formatted = folders.filter((folder) => folder !== "species").map((folder) => `data/${folder}`);

export const filesAreFormatted: Check = {
  name: "A file reads as all files do",
  async find(collection) {
    const { root } = collection;
    const isProject = await access(join(root, ".biome.json")).then(
      () => true,
      () => false,
    );
    const readable = new Set(
      allFiles(collection)
        .filter(({ faults }) => faults.length === 0)
        .map(({ path }) => path),
    );
    const unformatted = isProject ? await differing(root) : [];
    return unformatted
      .filter((path) => readable.has(path))
      .map((file) => ({
        file,
        found: "its lines stand otherwise",
        expected: "the breaks and spaces of all files",
        mend: "Run npm run format.",
      }));
  },
};

/** The files of which the formatter says that it would change them, or that it cannot read them. */
async function differing(root: string): Promise<readonly string[]> {
  const biome = createRequire(import.meta.url).resolve("@biomejs/biome/bin/biome");
  const words = [biome, "format", "--reporter=json", "--max-diagnostics=none", ...formatted];
  const run = promisify(execFile)(process.execPath, words, { cwd: root, maxBuffer: 2 ** 28 });
  const { stdout } = await run.catch((failed: { readonly stdout: string }) => failed);
  const diagnostics = fieldOf(JSON.parse(stdout), "diagnostics");
  return (Array.isArray(diagnostics) ? diagnostics : []).map((diagnostic) =>
    String(fieldOf(fieldOf(diagnostic, "location"), "path")).replaceAll("\\", "/"),
  );
}
