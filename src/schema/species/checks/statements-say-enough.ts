import type { Problem } from "../../../errors";
import type { Statement, TraitPath } from "../../../species";
import { traitDefinitions } from "../../../species/inner";
import type { Check } from "../../checked";
import { traitsOf } from "../walk";

/** A statement has a value or a note; figures, lengths and ages say what they mean, lengths also what was measured. */
export const statementsSayEnough: Check = (record) =>
  traitsOf(record).flatMap(({ trait, statements }) =>
    statements.flatMap(({ path, statement }): readonly Problem[] =>
      missing(statement, trait).map(([field, expected]) => ({
        path: field ? [...path, field] : path,
        code: "type",
        found: field ? undefined : statement,
        expected,
      })),
    ),
  );

/** The fields that a statement lacks, each with what should stand there; the statement itself where it says nothing. */
function missing(
  { value, note, by, as, measure }: Statement,
  trait: TraitPath,
): readonly (readonly [field: string, expected: string])[] {
  if (value === undefined) return note === undefined ? [["", "a value, or a note"]] : [];
  const { way } = traitDefinitions[trait];
  const unweighed = by === "curator" && note === undefined;
  const unmeant = as === undefined && way === "figures";
  const unnamed = as === undefined && (way === "lengths" || way === "ages");
  const unmeasured = measure === undefined && way === "lengths";
  return [
    ...(unweighed ? [["note", "a note on how the sources were weighed"] as const] : []),
    ...(unmeant ? [["as", "what the figure means, such as kept"] as const] : []),
    ...(unnamed ? [["as", "usual or greatest"] as const] : []),
    ...(unmeasured ? [["measure", "what was measured, or unstated"] as const] : []),
  ];
}
