import { InvalidInputError } from "../../../errors";
import { type TraitPath, traitTable } from "../../../species";
import { hasValue, inTraitUnit, type Stated } from "../../../species/inner";
import type { Check } from "../../checked";
import { unitsFor } from "../units";
import { traitsOf } from "../walk";

/** The unit of a statement is one of the trait's, and its figure converts from it. */
export const unitsConvert: Check = (record) =>
  traitsOf(record).flatMap(({ trait, statements }) =>
    statements
      .filter(
        ({ statement }) =>
          !isUnitOf(statement.unit, trait) || (hasValue(statement) && !converts(statement, trait)),
      )
      .map(({ path, statement }) => ({
        path: [...path, "unit"],
        code: "word",
        found: statement.unit,
        expected: unitsExpected(trait),
      })),
  );

/** Whether a unit is one of a trait's; a statement needs none, and one that a trait has no field for is told by its shape. */
const isUnitOf = (unit: string | undefined, trait: TraitPath): boolean =>
  unit === undefined || traitTable[trait].unit === undefined || unitsFor(trait).some((one) => one === unit);

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
