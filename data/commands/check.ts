// Checks the data as one collection, beyond what each file must be by itself.
import { parse } from "node:path/posix";
import { checks, type Slip } from "../checks";
import { allFiles, type Collection, readCollection } from "../reading/collection";
import { fieldOf, fieldsOf } from "../reading/fields";
import type { DataFile } from "../reading/files";
import { filesNamed, nearestTo } from "../reading/find-files";
import { type Position, positionAt } from "../reading/json";
import { strayFiles } from "../reading/stray-files";
import { type Answer, refused } from "./answer";

/** A slip with its place and the sentence that it breaks. */
interface Told {
  readonly slip: Slip;
  readonly rule: string;
  readonly position: Position;
}

/**
 * Every problem of files, each by its id, its path or any of its names, of what they cite, and of others with them; or of
 * all. Several words are one name where a file is called so.
 */
export async function check(root: string, ...words: readonly string[]): Promise<Answer> {
  return checked(await readCollection(root), ...words);
}

/** The same of a collection that was read. */
export async function checked(collection: Collection, ...words: readonly string[]): Promise<Answer> {
  const names = namesIn(collection, words);
  const lost = names.filter((name) => filesNamed(collection, name).length === 0);
  if (lost.length > 0) {
    const stray = await strayFiles(collection.root);
    return refused(lost.map((name) => unknown(collection, name, stray)).join("\n"));
  }
  const isAll = names.length === 0;
  const asked = isAll ? allFiles(collection) : names.flatMap((name) => filesNamed(collection, name));
  const told = await slipsOf(collection);
  const paths = new Set(asked.flatMap((file) => [file.path, ...citedBy(file)]));
  const about = isAll
    ? told
    : told.filter(({ slip: { file, besides = file } }) => paths.has(file) || paths.has(besides));
  const what = isAll ? `${asked.length} files` : asked.map(({ path }) => path).join(", ");
  const count = `${about.length} ${about.length === 1 ? "problem" : "problems"}`;
  return { lines: [...about.map(sentence), `${what}: ${count}.`], failed: about.length > 0 };
}

/** The names that words are: each of them where one means a file and all as one do not, else all as one. */
function namesIn(collection: Collection, words: readonly string[]): readonly string[] {
  const whole = words.join(" ");
  const isFile = (name: string) => filesNamed(collection, name).length > 0;
  if (words.length < 2 || (!isFile(whole) && words.some(isFile))) return words;
  return [whole];
}

/** What all checks find, file by file and line by line. */
async function slipsOf(collection: Collection): Promise<readonly Told[]> {
  const texts = new Map(allFiles(collection).map(({ path, text }) => [path, text]));
  const found = await Promise.all(
    checks.map(async ({ name: rule, find }) =>
      (await find(collection)).map((slip) => ({ slip, rule, position: positionOf(slip, texts) })),
    ),
  );
  return found.flat().sort(inOrder);
}

function positionOf({ file, at = [] }: Slip, texts: ReadonlyMap<string, string>): Position {
  return "line" in at ? at : positionAt(texts.get(file) ?? "", at);
}

/** File by file and line by line; what is said of a file as a whole comes last, for it may follow from its lines. */
const inOrder = (a: Told, b: Told) =>
  compare(a.slip.file, b.slip.file) ||
  Number(a.slip.at === undefined) - Number(b.slip.at === undefined) ||
  before(a.position, b.position);

const compare = (a: string, b: string) => (a < b ? -1 : Number(a > b));
const before = (a: Position, b: Position) => a.line - b.line || a.column - b.column;

/** The files of the sources that a record cites. */
const citedBy = ({ json }: DataFile): readonly string[] =>
  fieldsOf(fieldOf(json, "sources")).map(([, source]) => `data/sources/${fieldOf(source, "cite")}.json`);

function unknown(collection: Collection, asked: string, stray: readonly string[]): string {
  const nothing = `data has no file of the name ${asked}.`;
  const misplaced = stray.find((path) => nameOf(path) === nameOf(asked));
  if (misplaced !== undefined)
    return `${nothing} Nothing reads ${misplaced}: its place or its ending is wrong.`;
  const meant = nearestTo(collection, asked);
  return meant === undefined ? nothing : `${nothing} Did you mean ${meant}?`;
}

/** The name of a file without its place and ending, as an id is written. */
const nameOf = (path: string) => parse(path).name.toLowerCase().replaceAll(" ", "-");

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
