import type * as z from "zod";
import { traitTable } from "../species/traits";
import type { SpeciesRecord, TraitPath } from "../species/types";
import { checks } from "./checks";
import { type Problem, pathText, RecordError } from "./problem";
import { explainField, recordSchema } from "./record";
import { fieldsOf } from "./walk";

/** What {@link safeParseSpecies} returns. */
export type Parsed =
  | { readonly success: true; readonly record: SpeciesRecord }
  | { readonly success: false; readonly problems: readonly Problem[] };

/**
 * Checks that a value is a species record: its shape, and that its statements make sense together.
 *
 * @returns The record, or every problem at once, each with its path, what was found, what was expected and what
 * the field means. Never throws.
 *
 * @example
 * ```ts
 * import { safeParseSpecies } from "vivary/schema";
 *
 * safeParseSpecies({}).success; // => false
 * ```
 */
export function safeParseSpecies(input: unknown): Parsed {
  const shape = recordSchema.safeParse(input);
  const ofShape = shape.error?.issues.flatMap((issue) => problemsOf(issue, input)) ?? [];
  const ofMeaning = checks
    .flatMap((check) => check(fieldsOf(input)))
    .map((problem) => ({ explanation: explanationAt(problem.path), ...problem }));
  const problems = [...ofShape, ...ofMeaning];
  if (problems.length > 0 || !shape.success) return { success: false, problems };
  const { $schema, ...record } = shape.data;
  return { success: true, record: record as unknown as SpeciesRecord };
}

/**
 * The value as a species record.
 *
 * @throws RecordError with every problem of the record.
 *
 * @example
 * ```ts
 * import { parseSpecies } from "vivary/schema";
 *
 * parseSpecies({ id: "danio-rerio" }); // throws
 * ```
 */
export function parseSpecies(input: unknown): SpeciesRecord {
  const parsed = safeParseSpecies(input);
  if (!parsed.success) throw new RecordError(parsed.problems);
  return parsed.record;
}

type Issue = z.core.$ZodIssue;

/** A schema issue as problems: of a union, those of its first, telling alternative. */
function problemsOf(issue: Issue, input: unknown, above: readonly PropertyKey[] = []): readonly Problem[] {
  const path = [...above, ...issue.path];
  if (issue.code === "invalid_union" && issue.errors[0]) {
    return issue.errors[0].flatMap((inner) => problemsOf(inner, input, path));
  }
  if (issue.code === "unrecognized_keys") {
    return issue.keys.map((key) => problemAt([...path, key], input, "no such field here"));
  }
  return [problemAt(path, input, expectedBy(issue))];
}

function problemAt(keys: readonly PropertyKey[], input: unknown, expected: string): Problem {
  const path = pathText(keys);
  return { path, found: valueAt(input, keys), expected, explanation: explanationAt(path) };
}

/** What the size of a text or list counts. */
const counted: Readonly<Record<string, string>> = { string: " character", array: " entry" };

function expectedBy(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return issue.expected;
    case "invalid_value":
      return `one of ${issue.values.join(", ")}`;
    case "too_small":
      return `${issue.inclusive === false ? "more than" : "at least"} ${issue.minimum}${counted[issue.origin] ?? ""}`;
    case "too_big":
      return `at most ${issue.maximum}`;
    case "invalid_key":
      return `another key: ${issue.issues[0]?.message}`;
    default:
      return issue.message;
  }
}

/** What the trait, or the field of its statements, means that a path lies in. */
function explanationAt(path: string): string | undefined {
  const [section, name, , field] = path.replace(/^forms\.[^.]*\./, "").split(/[.[\]]+/);
  const trait = `${section}.${name}`;
  return Object.hasOwn(traitTable, trait) ? explainField(traitTable[trait as TraitPath], field) : undefined;
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) => (typeof value === "object" && value !== null ? Reflect.get(value, key) : undefined),
    input,
  );
}
