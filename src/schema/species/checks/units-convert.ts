import { InvalidInputError } from "../../../errors";
import type { TraitPath } from "../../../species";
import { hasValue, inTraitUnit, type Stated, traitDefinitions } from "../../../species/inner";
import { measureOf, type Unit, unitsOf } from "../../../units";
import type { Check } from "../../checked";
import { traitsOf } from "../walk";

/** A statement's figure converts from its unit to the trait's unit. */
export const unitsConvert: Check = (record) =>
  traitsOf(record).flatMap(({ trait, statements }) =>
    statements
      .filter(({ statement }) => hasValue(statement) && !converts(statement, trait))
      .map(({ path, statement }) => ({
        path: [...path, "unit"],
        code: "word",
        found: statement.unit,
        expected: unitsFor(trait),
      })),
  );

/** The units that a trait may be told in. */
function unitsFor(trait: TraitPath): string {
  const { unit = "1" } = traitDefinitions[trait];
  return unit === "1"
    ? "no unit, and a share from 0 to 1"
    : `one of ${unitsOf(measureOf(unit as Unit)).join(", ")}`;
}

/** Whether a statement's figure can be told in the trait's unit. */
export function converts(statement: Stated, trait: TraitPath): boolean {
  try {
    inTraitUnit(statement, trait);
    return true;
  } catch (error) {
    if (error instanceof InvalidInputError) return false;
    throw error;
  }
}
