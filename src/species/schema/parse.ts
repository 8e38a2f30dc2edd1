import type * as z from "zod";
import { traitTable } from "../traits";
import type { SpeciesRecord, TraitPath } from "../types";
import { checks } from "./checks";
import { type Problem, pathText, RecordError } from "./problem";
import { explainTrait, recordSchema } from "./record";
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
  const ofMeaning = checks.flatMap((check) => check(fieldsOf(input)));
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
    return issue.keys.map((key) => ({
      path: pathText([...path, key]),
      found: valueAt(input, [...path, key]),
      expected: "no such field here",
      explanation: explanationAt(path),
    }));
  }
  const found = valueAt(input, path);
  return [{ path: pathText(path), found, expected: expectedBy(issue), explanation: explanationAt(path) }];
}

function expectedBy(issue: Issue): string {
  switch (issue.code) {
    case "invalid_type":
      return issue.expected;
    case "invalid_value":
      return `one of ${issue.values.join(", ")}`;
    case "too_small":
      return `at least ${issue.inclusive === false ? "more than " : ""}${issue.minimum}`;
    case "too_big":
      return `at most ${issue.maximum}`;
    default:
      return issue.message;
  }
}

/** The sentence of the trait that a path lies in. */
function explanationAt(path: readonly PropertyKey[]): string | undefined {
  const [section, name] = path[0] === "forms" ? path.slice(2) : path;
  const trait = `${String(section)}.${String(name)}`;
  return Object.hasOwn(traitTable, trait) ? explainTrait(traitTable[trait as TraitPath]) : undefined;
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (value, key) => (typeof value === "object" && value !== null ? Reflect.get(value, key) : undefined),
    input,
  );
}
