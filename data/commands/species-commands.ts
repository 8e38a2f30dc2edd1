import { readFile } from "node:fs/promises";
import { Command } from "commander";
import { answersIn } from "../reading/issue-form";
import { type Answer, refused } from "./answer";
import { check } from "./check";
import { flips, judgementsText } from "./flips";
import { start, startFrom } from "./new";
import { isStartable, startFile } from "./new-file";
import { page } from "./page";
import { rename } from "./rename";
import { show } from "./show";
import { split } from "./split";
import { wanted } from "./wanted";

/** The commands on the data of a folder; what each answers is printed. */
export function speciesCommands(root: string, print: (answer: Answer) => void): Command {
  const program = new Command("npm run species");
  program
    .command("new [what...]")
    .description(
      'starts the record of a species, such as "Danio rerio"; or, before a name of its own, a source, an observation or a law',
    )
    .option("--like <species>", "a relative of which the questions tell how the answers may look")
    .option(
      "--from <issue>",
      "a file with the text of an issue that asks for the species, or tells what was seen",
    )
    .action(async (words: readonly string[], options: { readonly like?: string; readonly from?: string }) =>
      print(await startAsked(root, words, options)),
    );
  program
    .command("check [file...]")
    .description("lists every problem of files, each by id, path or any name, or of all data")
    .action(async (words: readonly string[]) => print(await check(root, ...words)));
  program
    .command("show <species...>")
    .description(
      "prints a profile, its forms, what it lacks, and the verdicts that its change flips, with the reasons",
    )
    .action(async (words: readonly string[]) => print(await show(root, words.join(" "))));
  program
    .command("page <species...>")
    .description("prints the page of a species as readers get it, with company and sources")
    .action(async (words: readonly string[]) => print(await page(root, words.join(" "))));
  program
    .command("rename <species> <name>")
    .description("gives a species another accepted name; what names it follows, and the old id forwards")
    .action(async (species: string, name: string) => print(await rename(root, species, name)));
  program
    .command("split <species> <name>")
    .description("starts the record of a species that was taken for another one until now")
    .action(async (species: string, name: string) => print(await split(root, species, name)));
  program
    .command("wanted [species...]")
    .description("lists the gaps whose closing would settle most, of all species or of one")
    .action(async (words: readonly string[]) =>
      print(await wanted(root, words.length > 0 ? words.join(" ") : undefined)),
    );
  program
    .command("flips [base]")
    .description("lists the verdicts on pairs that differ from another commit, main by default")
    .action(async (base?: string) => print(await flips(root, base)));
  program
    .command("judgements")
    .description("prints the verdict on every pair as JSON")
    .action(async () => print({ lines: [await judgementsText(root)], failed: false }));
  return program;
}

/** Starts what is asked for: a species by its name or by an issue, or another file by its kind and name. */
async function startAsked(
  root: string,
  words: readonly string[],
  { like, from }: { readonly like?: string; readonly from?: string },
): Promise<Answer> {
  const issue = from === undefined ? undefined : await readFile(from, "utf8").catch(() => null);
  if (issue === null) return refused(`There is no file ${from}.`);
  const [what = "", ...rest] = words.join(" ").trim().split(/\s+/);
  if (isStartable(what))
    return startFile(root, what, rest.join("-"), issue === undefined ? {} : { answers: answersIn(issue) });
  return issue === undefined
    ? start(root, [what, ...rest].join(" "), { like })
    : startFrom(root, issue, like);
}
