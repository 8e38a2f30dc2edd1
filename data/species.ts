// What a contributor does with records: npm run species new | check | show | page | rename | split | wanted
import type { Answer } from "./commands/answer";
import { speciesCommands } from "./commands/species-commands";
import { root } from "./reading/files";

/** Prints an answer, with what is wrong as errors. */
function print({ lines, failed }: Answer): void {
  (failed ? console.error : console.log)(lines.join("\n"));
  if (failed) process.exitCode = 1;
}

await speciesCommands(root, print).parseAsync();
