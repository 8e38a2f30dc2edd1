import type { Problem } from "../../../errors";
import type { Statement, TraitPath, TraitWay } from "../../../species";
import { traitDefinitions } from "../../../species/inner";
import type { Check } from "../../checked";
import { neededFields } from "../needed";
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
  statement: Statement,
  trait: TraitPath,
): readonly (readonly [field: string, expected: string])[] {
  const { value, note, by } = statement;
  if (value === undefined) return note === undefined ? [["", "a value, or a note"]] : [];
  const { way } = traitDefinitions[trait];
  const unweighed = by === "curator" && note === undefined;
  return [
    ...(unweighed ? [["note", "a note on how the sources were weighed"] as const] : []),
    ...neededFields[way]
      .filter((field) => statement[field] === undefined)
      .map((field) => [field, wanted(field, way)] as const),
  ];
}

/** What stands in a field that a statement needs. */
function wanted(field: "as" | "measure", way: TraitWay): string {
  if (field === "measure") return "what was measured, or unstated";
  return way === "figures" ? "what the figure means, such as kept" : "usual or greatest";
}
