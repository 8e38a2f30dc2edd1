import { InvalidInputError } from "../../../errors";
import type { TraitPath } from "../../../species";
import { hasValue, inTraitUnit, type Stated, traitDefinitions } from "../../../species/inner";
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
        expected: `a unit that converts to ${traitDefinitions[trait].unit}`,
      })),
  );

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
