// Writes records one statement a line, with their keys in one order, and the JSON Schemas. `--check` only tells which
// records differ.
import { program } from "commander";
import { root } from "./files";
import { format, unformatted } from "./formatting";

program
  .option("--check", "only tell which records differ")
  .action(async ({ check }: { readonly check?: true }) => {
    if (!check) return console.log(`${(await format(root)).length} records formatted.`);
    const paths = (await unformatted(root)).map(({ path }) => path);
    if (paths.length === 0) return console.log("Every record is formatted.");
    console.error(`Not formatted: ${paths.join(", ")}. Run: npm run format`);
    process.exitCode = 1;
  });

await program.parseAsync();
