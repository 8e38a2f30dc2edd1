import { InvalidInputError, type Problem } from "../../errors";
import type { SpeciesRecord } from "../../species";
import { checked } from "../checked";
import { explained } from "../explained";
import { recordChecks } from "./checks";
import { recordSchema } from "./record";

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
  if (!parsed.success)
    return {
      success: false,
      problems: parsed.problems.map((problem) => explained(problem, recordSchema)),
    };
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
