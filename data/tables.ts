// Writes the files to be attached to a release: the tables as a Data Package, and as a Darwin Core Archive.
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { program } from "commander";
import { strToU8, type Zippable, zipSync } from "fflate";
import { root } from "./reading/files";
import { darwinCoreFiles } from "./tables/darwin-core";
import { dataPackageFiles, type Files, releasedRows } from "./tables/data-package";

/** What says under which terms the figures stand, and how to cite them; it travels with every archive. */
async function termsOfUse(): Promise<Files> {
  const names = ["NOTICE.md", "CITATION.cff", "LICENSE"];
  const texts = await Promise.all(names.map((name) => readFile(join(root, name), "utf8")));
  return Object.fromEntries(names.map((name, index) => [name, texts[index] ?? ""]));
}

/** The files as one zip, the same for the same files. */
function zipped(files: Files): Uint8Array {
  const entries: Zippable = Object.fromEntries(
    Object.entries(files).map(([name, text]) => [name, [strToU8(text), { mtime: "1980-01-01T12:00:00" }]]),
  );
  return zipSync(entries, { level: 9 });
}

program
  .option("--to <folder>", "where to write them", join(root, ".cache/tables"))
  .action(async ({ to }: { readonly to: string }) => {
    const rows = releasedRows();
    const terms = await termsOfUse();
    const archives = {
      "vivary-data-package.zip": { ...dataPackageFiles(rows), ...terms },
      "vivary-darwin-core-archive.zip": { ...darwinCoreFiles(rows), ...terms },
    };
    await mkdir(to, { recursive: true });
    for (const [name, files] of Object.entries(archives)) {
      const archive = zipped(files);
      await writeFile(join(to, name), archive);
      const held = Object.keys(files).join(", ");
      console.log(`${join(to, name)}: ${Math.round(archive.length / 1000)} kB (${held})`);
    }
  });

await program.parseAsync();
