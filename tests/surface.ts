// Writes what the package exports to tests/surface. `--check` only tells where a report is stale, and how.
import { readdir, readFile, rm, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { program } from "commander";
import { createTwoFilesPatch } from "diff";
import { root } from "../data/reading/files";
import { entriesOf, surfaceOf } from "./surface/read";

const folder = join(root, "tests/surface");

async function written(): Promise<ReadonlyMap<string, string>> {
  const files = (await readdir(folder)).filter((file) => file.endsWith(".txt"));
  return new Map(
    await Promise.all(
      files.map(
        async (file) => [file.slice(0, -".txt".length), await readFile(join(folder, file), "utf8")] as const,
      ),
    ),
  );
}

program.option("--check", "only tell what is stale").action(async ({ check }) => {
  const [surface, reports] = [surfaceOf(await entriesOf(root)), await written()];
  const names = [...new Set([...surface.keys(), ...reports.keys()])].sort();
  const stale = names.filter((name) => surface.get(name) !== reports.get(name));
  if (!check) {
    await Promise.all(stale.map((name) => save(name, surface.get(name))));
    return;
  }
  for (const name of stale) {
    const file = `tests/surface/${name}.txt`;
    console.error(
      createTwoFilesPatch(file, file, reports.get(name) ?? "", surface.get(name) ?? "", "", "", {
        context: 0,
      }),
    );
  }
  if (stale.length === 0) return;
  console.error("What the package exports has changed. If that is meant: npm run pages, and a changeset.");
  process.exitCode = 1;
});

/** Writes a report, or takes away that of a subpath that is gone. */
async function save(name: string, text: string | undefined): Promise<void> {
  const file = join(folder, `${name}.txt`);
  await (text === undefined ? rm(file) : writeFile(file, text));
}

await program.parseAsync();
