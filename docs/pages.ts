// Writes the pages that follow from the library. `--check` only tells whether the one that is committed is stale.
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { program } from "commander";
import { evidencePage } from "./evidence";
import { rulesPage } from "./rules";
import { sourcesPage } from "./sources";

const place = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** What counts and mixes everything is written anew for whoever wants to read it, and never committed. */
async function write(): Promise<void> {
  await mkdir(place("pages"), { recursive: true });
  await Promise.all([
    writeFile(place("rules.md"), rulesPage()),
    writeFile(place("pages/evidence.md"), evidencePage()),
    writeFile(place("pages/sources.md"), await sourcesPage()),
  ]);
}

program.option("--check", "only tell whether docs/rules.md is stale").action(async ({ check }) => {
  if (!check) return write();
  if ((await readFile(place("rules.md"), "utf8")) === rulesPage()) return;
  console.error("docs/rules.md is stale: npm run pages");
  process.exitCode = 1;
});

await program.parseAsync();
