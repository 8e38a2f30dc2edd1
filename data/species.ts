// What a contributor does with records: npm run species new | check | show | wanted
import { program } from "commander";
import type { Answer } from "./commands/answer";
import { check } from "./commands/check";
import { flips, judgementsText } from "./commands/flips";
import { start } from "./commands/new";
import { show } from "./commands/show";
import { wanted } from "./commands/wanted";
import { root } from "./files";

/** Prints an answer, with what is wrong as errors. */
function print({ lines, failed }: Answer): void {
  (failed ? console.error : console.log)(lines.join("\n"));
  if (failed) process.exitCode = 1;
}

program.name("npm run species");
program
  .command("new <name...>")
  .description(
    'starts the record of a species, such as "Danio rerio", with the essential traits as questions',
  )
  .action(async (words: readonly string[]) => print(await start(root, words.join(" ").trim())));
program
  .command("check [id]")
  .description("lists every problem of one record, or of all data")
  .action(async (id?: string) => print(await check(root, id)));
program
  .command("show <id>")
  .description("prints a profile, and the verdicts that the changed records flip")
  .action(async (id: string) => print(await show(root, id)));
program
  .command("wanted")
  .description("lists the gaps whose closing would settle most")
  .action(async () => print(await wanted(root)));
program
  .command("flips [base]")
  .description("lists the verdicts on pairs that differ from another commit, main by default")
  .action(async (base?: string) => print(await flips(root, base)));
program
  .command("judgements")
  .description("prints the verdict on every pair as JSON")
  .action(async () => console.log(await judgementsText(root)));

await program.parseAsync();
