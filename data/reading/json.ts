// Reads JSON: what it says, what is wrong with it, and where things stand in it.
import {
  findNodeAtLocation,
  getNodeValue,
  type Node,
  type ParseError,
  parseTree,
  printParseErrorCode,
} from "jsonc-parser";

/** Where something stands in a file; both count from 1. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

/** What is wrong with a text as JSON. */
export interface Fault {
  readonly at: Position;
  readonly found: string;
  readonly mend: string;
}

/** A text as JSON. */
interface Read {
  /** What it says; undefined where its brackets and quotes do not close, so that nobody can tell. */
  readonly json: unknown;
  /** Why it is no JSON, or JSON that not everyone reads alike; of each line the first. */
  readonly faults: readonly Fault[];
}

/** The mark that some editors put before the first character. */
const mark = "\uFEFF";

/** A text without the mark of byte order. */
export const unmarked = (text: string): string => (text.startsWith(mark) ? text.slice(mark.length) : text);

export function readJson(text: string): Read {
  const plain = unmarked(text);
  const json = plain === text ? wholly(text) : undefined;
  return json === undefined ? searched(text, plain) : { json, faults: [] };
}

/** What a text says if it has no fault, which is soon told; undefined where it must be looked at closely. */
function wholly(text: string): unknown {
  try {
    const json: unknown = JSON.parse(text);
    return countKeys(json) === keysWritten(text) ? json : undefined;
  } catch {
    return undefined;
  }
}

function countKeys(value: unknown): number {
  if (typeof value !== "object" || value === null) return 0;
  const held = Object.values(value);
  const own = Array.isArray(value) ? 0 : held.length;
  return held.reduce<number>((sum, one) => sum + countKeys(one), own);
}

/** How many texts of a JSON text stand before a colon. */
const keysWritten = (text: string) =>
  [...text.matchAll(/"(?:[^"\\]|\\.)*"(\s*:)?/g)].filter(([, colon]) => colon !== undefined).length;

/** What a text says, and all that is wrong with it. */
function searched(text: string, plain: string): Read {
  const { tree, errors } = treeOf(plain);
  const marked = plain === text ? [] : [markFound];
  const repeated = tree ? repeatedKeys(tree).map((node) => repetition(plain, node)) : [];
  const first = errors.filter((error, index) => !follows(plain, error, errors[index - 1]));
  const faults = [
    ...marked,
    ...firstOfEachLine([...first.map((error) => faultOf(plain, error)), ...repeated]),
  ];
  if (errors.length === 0) return { json: JSON.parse(plain), faults };
  return { json: tree && errors.every(isSmall) ? getNodeValue(tree) : undefined, faults };
}

/** Where what stands at a path begins, or the nearest thing around it. */
export function positionAt(text: string, path: readonly PropertyKey[]): Position {
  const plain = unmarked(text);
  const { tree } = treeOf(plain);
  const ends = path.map((_, index) => path.length - index);
  const nodes = ends.map((end) => tree && findNodeAtLocation(tree, path.slice(0, end).map(segment)));
  const nearest = nodes.find((node) => node !== undefined) ?? tree;
  return positionOf(plain, nearest ? beginningOf(nearest) : 0);
}

const segment = (key: PropertyKey) => (typeof key === "symbol" ? key.toString() : key);

/** Several lines begin with their key. */
const beginningOf = ({ type, parent, offset }: Node) =>
  (type === "object" || type === "array") && parent?.type === "property" ? parent.offset : offset;

function treeOf(text: string) {
  const errors: ParseError[] = [];
  const tree = parseTree(text, errors, { disallowComments: true, allowTrailingComma: false });
  return { tree, errors };
}

function positionOf(text: string, offset: number): Position {
  const before = text.slice(0, offset).split("\n");
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}

/** The keys that stand twice in one object, however deep. */
function repeatedKeys(node: Node): readonly Node[] {
  const { type, children = [] } = node;
  const keys = type === "object" ? children.flatMap(({ children: [key] = [] }) => (key ? [key] : [])) : [];
  const known = new Set<unknown>();
  const repeated = keys.filter(({ value }) => known.size === known.add(value).size);
  return [...repeated, ...children.flatMap(repeatedKeys)];
}

const repetition = (text: string, { value, offset }: Node): Fault => ({
  at: positionOf(text, offset),
  found: `the key ${JSON.stringify(value)} a second time`,
  mend: "Keep one of the two, or put the lines of both into one list.",
});

const markFound: Fault = {
  at: { line: 1, column: 1 },
  found: "an invisible mark before the first character",
  mend: "Run npm run format, which takes it away.",
};

/** Whether nothing stands between a mistake and the one before it, from which it follows. */
const follows = (text: string, { offset }: ParseError, earlier: ParseError | undefined) =>
  earlier !== undefined && text.slice(earlier.offset + earlier.length, offset).trim() === "";

/** What follows in a line often follows from the first fault. */
function firstOfEachLine(faults: readonly Fault[]): readonly Fault[] {
  const inOrder = [...faults].sort((a, b) => a.at.line - b.at.line || a.at.column - b.at.column);
  return inOrder.filter(({ at }, index) => inOrder[index - 1]?.at.line !== at.line);
}

/** A mistake that leaves no doubt about what is meant by the rest. */
const isSmall = ({ error }: ParseError) =>
  ["PropertyNameExpected", "ValueExpected", "CommaExpected", "InvalidCommentToken", "InvalidSymbol"].includes(
    printParseErrorCode(error),
  );

/** A mistake as a keeper would say it. */
function faultOf(text: string, error: ParseError): Fault {
  const before = text.slice(0, error.offset).trimEnd();
  const found = text.slice(error.offset, error.offset + error.length);
  const at = (offset: number) => positionOf(text, offset);
  const here = at(error.offset);
  const code = printParseErrorCode(error.error);
  const fault = (found: string, mend: string, place = here): Fault => ({ at: place, found, mend });

  if (/^(?:<{7}|={7}|>{7}|\|{7})/.test(found))
    return fault(
      `the mark of two versions that git could not join, ${found.slice(0, 7)}`,
      "Keep what is right of both versions, and take out the lines that begin with <<<<<<<, ======= and >>>>>>>.",
    );
  if (text.trim() === "") return fault("an empty file", "Write the record, or delete the file.");
  if (code === "InvalidCommentToken")
    return fault("a comment, which JSON does not know", 'Take it away, or say it in a "note".');
  if (/^[“”„‟‘’'«»]/.test(found))
    return fault(`the quote ${found[0]}, which is none in JSON`, 'Write straight quotes: "kept".');
  if (/^(true|false|null)$/i.test(found))
    return fault(`the word ${found}`, `Write it in small letters: ${found.toLowerCase()}.`);
  if (/\d,$/.test(before) && /^\d/.test(found))
    return fault(`a comma in a number, before ${found}`, "Write a point: 4.5.", at(before.length - 1));
  if (/^[+.]/.test(found) || (code === "CommaExpected" && /[^\w".]0$/.test(before) && /^\d/.test(found)))
    return fault(`a number that JSON does not know, at ${found}`, "Write it like 0.5 or 12.");
  if (code === "CommaExpected")
    return fault("no comma between two entries", "Add a comma at the end.", at(before.length));
  if (code === "ColonExpected")
    return fault("no colon after a key", 'Write "key": value.', at(before.length));
  if ((code === "PropertyNameExpected" || code === "ValueExpected") && before.endsWith(","))
    return fault("a comma after the last entry", "Take the comma away.", at(before.length - 1));
  if (code === "UnexpectedEndOfString" || code === "InvalidCharacter")
    return fault(`a quote that does not close: ${found.slice(0, 40)}`, 'Close it with ".');
  if (code === "CloseBraceExpected") return fault("no } at the end", "Close what was opened with {.");
  if (code === "CloseBracketExpected") return fault("no ] at the end", "Close what was opened with [.");
  if (code === "EndOfFileExpected")
    return fault(`${found} after the end of the record`, "Take it away, or a } before it.");
  return fault(`${found || "the end"} where it does not belong`, 'Write words in quotes: "kept".');
}
