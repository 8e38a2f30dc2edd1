// Starts a source, an observation or a law, with what must be known as questions.
import { access, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { DataFolder } from "vivary/schema";
import { question } from "../checks/nothing-is-left-to-fill-in";
import type { Answers } from "../reading/issue-form";
import { type Answer, refused } from "./answer";

/** What may be started beside a species. */
export type Startable = "source" | "observation" | "law";

export const isStartable = (word: string): word is Startable => Object.hasOwn(folders, word);

const folders: Readonly<Record<Startable, DataFolder>> = {
  source: "sources",
  observation: "sources",
  law: "legal",
};

const ask = (what: string) => `${question} ${what}`;

/** What a file may start with beside its name. */
interface Beginnings {
  readonly now?: Date;
  /** What an issue says, by question. */
  readonly answers?: Answers;
}

/** What each starts with. What stays as it is here is told by the checks. */
const blanks: Readonly<Record<Startable, (id: string, beginnings: Required<Beginnings>) => object>> = {
  source: (id) => ({
    $schema: "../schemas/sources.schema.json",
    id,
    type: "article-journal",
    title: ask("the title as printed"),
    author: [{ family: ask("the family name"), given: "A." }],
    issued: { "date-parts": [[Number(/\d{4}/.exec(id)?.[0] ?? 0)]] },
    "container-title": ask("the journal or the book that it stands in"),
    note: ask("a DOI or URL in a field of that name, and its licence if it states one"),
  }),
  observation: (id, { now, answers }) => {
    const seen = answers.get("what was seen");
    const keeper = answers.get("your name");
    return {
      $schema: "../schemas/sources.schema.json",
      id,
      type: "personal_communication",
      title: `${ask("what was seen, in a few words")}${seen === undefined ? "" : `. The issue says: ${seen}`}`,
      author: [
        keeper === undefined
          ? { family: ask("the family name of who saw it"), given: "A." }
          : { literal: keeper },
      ],
      issued: { "date-parts": [dayIn(answers.get("when")) ?? dayOf(now)] },
      custom: {
        observation: { animals: countIn(answers.get("animals")), days: countIn(answers.get("days")) },
      },
    };
  },
  law: (id) => ({
    $schema: "../schemas/legal.schema.json",
    jurisdiction: ask("where it applies, in words"),
    listings: [
      {
        jurisdiction: ask("where it applies, in words"),
        instrument: ask("title and number of the instrument"),
        date: "",
        effect: ask("what it does, in one sentence"),
        basis: "published",
        at: ask(`where the text of ${id} was read`),
        taxa: [],
      },
    ],
  }),
};

const dayOf = (now: Date) => [now.getUTCFullYear(), now.getUTCMonth() + 1, now.getUTCDate()];

/** The year, month and day of an answer such as 2026-05, or undefined. */
const dayIn = (answer = ""): readonly number[] | undefined =>
  /^\d{4}(-\d{2}){0,2}$/.test(answer) ? answer.split("-").map(Number) : undefined;

/** The sum of an answer of bare numbers, such as "6 and 1"; 0 for any other, which the checks then ask for. */
const countIn = (answer = ""): number =>
  /^\d+((,| and| \+)? \d+)*$/.test(answer)
    ? (answer.match(/\d+/g) ?? []).reduce((sum, count) => sum + Number(count), 0)
    : 0;

/** What comes next. */
const next: Readonly<Record<Startable, (id: string) => string>> = {
  source: (id) => `Name it in the sources of a record: "key": { "cite": "${id}", "at": "page 3" }`,
  observation: (id) => `Name it in the sources of a record: "key": { "cite": "${id}", "observed": true }`,
  law: () =>
    'List accepted names, genera or families in taxa; and in within, above listings, whose rules apply there as well: ["cites"].',
};

export async function startFile(
  root: string,
  what: Startable,
  id: string,
  { now = new Date(), answers = new Map() }: Beginnings = {},
): Promise<Answer> {
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))
    return refused(`Expected lower-case words joined by hyphens, such as ${examples[what]}, found "${id}".`);
  const path = `data/${folders[what]}/${id}.json`;
  const file = join(root, path);
  if (
    await access(file).then(
      () => true,
      () => false,
    )
  )
    return refused(`${path} is there already.`);
  await writeFile(file, `${JSON.stringify(blanks[what](id, { now, answers }), null, 2)}\n`);
  return {
    lines: [
      `${path} waits to be filled in.`,
      next[what](id),
      `Then: npm run format && npm run species check ${path}`,
    ],
    failed: false,
  };
}

const examples: Readonly<Record<Startable, string>> = {
  source: "yanar-2019",
  observation: "keeper-2026",
  law: "us-alabama",
};
