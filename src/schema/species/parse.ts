import { InvalidInputError, type Problem } from "../../errors";
import { type SpeciesRecord, type TraitPath, traitTable } from "../../species";
import { checked } from "../checked";
import { recordChecks } from "./checks";
import { recordSchema } from "./record";
import { explainField } from "./statement";

/** What {@link safeParseSpecies} returns. */
export type ParsedSpecies =
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
export function safeParseSpecies(input: unknown): ParsedSpecies {
  const parsed = checked({ shape: recordSchema, checks: recordChecks }, input);
  if (!parsed.success) return { success: false, problems: parsed.problems.map(explained) };
  const { $schema, ...record } = parsed.data;
  return { success: true, record };
}

/**
 * The value as a species record.
 *
 * @throws InvalidInputError with every problem of the record.
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
  if (!parsed.success) throw new InvalidInputError(parsed.problems);
  return parsed.record;
}

/** The problem with what the trait, or the field of its statements, means that it lies in. */
function explained(problem: Problem): Problem {
  const { path } = problem;
  const [section, name, , field] = path[0] === "forms" ? path.slice(2) : path;
  const trait = `${section}.${name}`;
  if (problem.explanation || !Object.hasOwn(traitTable, trait)) return problem;
  const explanation = explainField(traitTable[trait as TraitPath], field?.toString());
  return { ...problem, explanation };
}
