// Writes records one statement a line, with their keys in one order, and the JSON Schemas. `--check` only tells which
// records differ.
import { program } from "commander";
import { checkFormat, formatted } from "./commands/format";
import { root } from "./reading/files";

program
  .option("--check", "only tell which records differ")
  .action(async ({ check }: { readonly check?: true }) => {
    const { lines, failed } = check ? await checkFormat(root) : await formatted(root);
    (failed ? console.error : console.log)(lines.join("\n"));
    if (failed) process.exitCode = 1;
  });

await program.parseAsync();
