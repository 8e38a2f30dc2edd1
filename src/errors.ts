/** What sort of mistake a {@link Problem} is. */
export type ProblemCode =
  /** A value of another type, or none where one is needed. */
  | "type"
  /** A number outside the span that is accepted, or a range with its ends the wrong way round. */
  | "range"
  /** A word that is none of those known. */
  | "word"
  /** A key that nothing reads. */
  | "unknown-key"
  /** A name or id of no species that is known. */
  | "unknown-species"
  /** A form that its species does not have. */
  | "unknown-form"
  /** A format of saved data that this version does not read. */
  | "unknown-format"
  /** More than is accepted at once. */
  | "too-many"
  /** Two things, each in order, that cannot be true together. */
  | "conflict"
  /** Text with characters or of a length that is not accepted. */
  | "text";

/** One thing wrong with what was given. */
export interface Problem {
  /** Where: `["groups", 1, "males"]`. */
  readonly path: readonly (string | number)[];
  /** What sort of mistake, for a program to tell mistakes apart by. */
  readonly code: ProblemCode;
  /** What would have been accepted. */
  readonly expected: string;
  /** What came. */
  readonly found: unknown;
  /** What the field means. */
  readonly explanation?: string | undefined;
}

/**
 * An argument that no answer can be given for: a number that is not finite, a reversed range, an unknown
 * unit, id or form, a size of zero or less, a count that is no whole number, an option that the function does not have.
 * Of a plan, a record or a rule it says everything that is wrong at once; of the other arguments what was met first.
 */
export class InvalidInputError extends Error {
  override readonly name: string = "InvalidInputError";

  constructor(
    /** Everything that was wrong; at least one thing. */
    readonly problems: readonly Problem[],
  ) {
    super(problems.map(describeProblem).join("\n"));
  }
}

/** A refusal for one reason, the path written as text: `groups[1].males`. */
export function refusal(
  subject: string,
  expected: string,
  found: unknown,
  code: ProblemCode = "type",
): InvalidInputError {
  return new InvalidInputError([{ path: pathOf(subject), code, expected, found }]);
}

/** What is made of one part of what was given; a refusal of it says where the part stands. */
export function ofPart<Made>(path: Problem["path"], make: () => Made): Made {
  try {
    return make();
  } catch (error) {
    if (!(error instanceof InvalidInputError)) throw error;
    throw new InvalidInputError(problemsAt(path, error.problems));
  }
}

/** Problems of a part of what was given, with their paths in the whole of it. */
export const problemsAt = (path: Problem["path"], problems: readonly Problem[]): readonly Problem[] =>
  problems.map((problem) => ({ ...problem, path: [...path, ...problem.path] }));

/** The units in which ranges of validity are told: ids of `vivary/units`, and `g/d`, grams a day. */
export type DomainUnit = "cm" | "d" | "degC" | "dH" | "g" | "g/d" | "g/kg" | "kPa" | "L" | "m2";

/** A value outside the range in which an equation holds. A `RangeError` that names the range. */
export class OutsideDomainError extends RangeError {
  override readonly name: string = "OutsideDomainError";

  constructor(
    /** Which variable left the range of validity. */
    readonly subject: string,
    /** The range of validity, both ends included. */
    readonly domain: { readonly min: number; readonly max: number },
    /** What came. */
    readonly found: number,
    /** The unit of the range and of what came; absent where it has none, as a pH. */
    readonly unit?: DomainUnit | undefined,
  ) {
    const symbol = unit === undefined ? "" : ` ${unit.replace("deg", "°").replace("2", "²")}`;
    super(`${subject}: holds from ${domain.min} to ${domain.max}${symbol}, found ${found}${symbol}`);
  }
}

/** A problem in a sentence or two, on one line and of bounded length whatever was given. */
export function describeProblem({ path, expected, found, explanation }: Problem): string {
  const where = pathText(path) || "what was given";
  const sentence = `${shortened(where, longestWords)}: expected ${shortened(expected, longestWords)}, found ${shown(found)}`;
  return visible(explanation ? `${sentence}. ${shortened(explanation, longestWords)}` : sentence);
}

/** `["groups", 1, "males"]` as `groups[1].males`. */
export function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((part) => (typeof part === "number" ? `[${part}]` : `.${shortened(String(part))}`))
    .join("")
    .replace(/^\./, "");
}

/** `groups[1].males` as `["groups", 1, "males"]`. */
function pathOf(text: string): readonly (string | number)[] {
  return text
    .split(/[.[\]]+/)
    .filter(Boolean)
    .map((part) => (/^\d+$/.test(part) ? Number(part) : part));
}

/** A value as a message shows it: texts in quotes, so that `"7"` is not 7, and neither is `7n`. */
function shown(found: unknown): string {
  if (typeof found === "string") return `"${shortened(found)}"`;
  if (typeof found === "function") return "a function";
  if (typeof found !== "object" && found !== undefined)
    return shortened(String(found) + (typeof found === "bigint" ? "n" : ""));
  try {
    return shortened(JSON.stringify(found) ?? "nothing");
  } catch {
    return "what JSON cannot hold";
  }
}

/** How many characters of a value, or of one part of a path, a message shows. */
const longestValue = 80;

/** How many characters of its own words a message shows: the list of all units fits. */
const longestWords = 400;

const shortened = (text: string, longest = longestValue) =>
  text.length > longest ? `${text.slice(0, longest)}…` : text;

/** Text without characters that a reader cannot see: controls, and marks that turn the direction of reading. */
const visible = (text: string) => text.replaceAll(/[\p{Cc}\p{Cf}\p{Cs}\u2028\u2029]/gu, " ");
