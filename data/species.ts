// What a contributor does with records: npm run species new | check | show | page | rename | split | wanted
import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Answer } from "./commands/answer";
import { compile } from "./modules/compiling";
import { root } from "./reading/files";

/** Prints an answer, with what is wrong as errors. */
function print({ lines, failed }: Answer): void {
  (failed ? console.error : console.log)(lines.join("\n"));
  if (failed) process.exitCode = 1;
}

// Commands import what src is given of data, which a clone lacks until it is compiled.
if (!existsSync(join(root, "src/generated.ts"))) await compile(root);
const { speciesCommands } = await import("./commands/species-commands");

await speciesCommands(root, print).parseAsync();
