// Checks the data as one collection, beyond what each file must be by itself.
import { checks, type Slip } from "../checks";
import { allFiles, type Collection, readCollection } from "../collection";
import { fieldOf, fieldsOf } from "../fields";
import type { DataFile } from "../files";
import { filesNamed, nearestTo } from "../find-files";
import { type Position, positionAt } from "../json";
import { type Answer, refused } from "./answer";

/** A slip with its place and the sentence that it breaks. */
interface Told {
  readonly slip: Slip;
  readonly rule: string;
  readonly position: Position;
}

/** Every problem of a file, by its id, its path or any of its names, of what it cites, and of others with it; or of all. */
export async function check(root: string, name?: string): Promise<Answer> {
  return checked(await readCollection(root), name);
}

/** The same of a collection that was read. */
export async function checked(collection: Collection, name?: string): Promise<Answer> {
  const asked = name === undefined ? allFiles(collection) : filesNamed(collection, name);
  if (asked.length === 0) return refused(unknown(collection, name ?? ""));
  const told = await slipsOf(collection);
  const paths = new Set(asked.flatMap((file) => [file.path, ...citedBy(file)]));
  const about =
    name === undefined
      ? told
      : told.filter(({ slip: { file, besides = file } }) => paths.has(file) || paths.has(besides));
  const what = name === undefined ? `${asked.length} files` : asked.map(({ path }) => path).join(", ");
  const count = `${about.length} ${about.length === 1 ? "problem" : "problems"}`;
  return { lines: [...about.map(sentence), `${what}: ${count}.`], failed: about.length > 0 };
}

/** What all checks find, file by file and line by line. */
async function slipsOf(collection: Collection): Promise<readonly Told[]> {
  const texts = new Map(allFiles(collection).map(({ path, text }) => [path, text]));
  const found = await Promise.all(
    checks.map(async ({ name: rule, find }) =>
      (await find(collection)).map((slip) => ({ slip, rule, position: positionOf(slip, texts) })),
    ),
  );
  return found.flat().sort((a, b) => compare(a.slip.file, b.slip.file) || before(a.position, b.position));
}

function positionOf({ file, at = [] }: Slip, texts: ReadonlyMap<string, string>): Position {
  return "line" in at ? at : positionAt(texts.get(file) ?? "", at);
}

const compare = (a: string, b: string) => (a < b ? -1 : Number(a > b));
const before = (a: Position, b: Position) => a.line - b.line || a.column - b.column;

/** The files of the sources that a record cites. */
const citedBy = ({ json }: DataFile): readonly string[] =>
  fieldsOf(fieldOf(json, "sources")).map(([, source]) => `data/sources/${fieldOf(source, "cite")}.json`);

function unknown(collection: Collection, asked: string): string {
  const meant = nearestTo(collection, asked);
  const question = meant === undefined ? "" : ` Did you mean ${meant}?`;
  return `data has no file of the name ${asked}.${question}`;
}

/** Where, what, what was expected, an example, and how to mend it. */
function sentence({ slip, rule, position: { line, column } }: Told): string {
  const { file, found, expected, guess = "", example, mend } = slip;
  const parts = [found, expected && `expected ${expected}`].filter((part) => part !== undefined);
  const said = parts.map((part) => part.replace(/\.$/, "")).join("; ");
  return [
    `${file}:${line}:${column}: ${said}.${guess}`,
    ...(example === undefined ? [] : [`  For example: ${example}`]),
    `  ${rule}. ${mend}`,
  ].join("\n");
}
