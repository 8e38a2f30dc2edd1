import { InvalidInputError } from "../../../errors";
import type { TraitPath } from "../../../species";
import { hasValue, inTraitUnit, type Stated } from "../../../species/inner";
import type { Check } from "../../checked";
import { unitsFor } from "../units";
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
        expected: unitsExpected(trait),
      })),
  );

function unitsExpected(trait: TraitPath): string {
  const units = unitsFor(trait);
  return units.length > 1 ? `one of ${units.join(", ")}` : "no unit, and a share from 0 to 1";
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
