import { InvalidInputError } from "../../errors";
import { hasValue } from "../../species/statements";
import { inTraitUnit } from "../../species/trait-unit";
import { traitTable } from "../../species/traits";
import { traitsOf } from "../walk";
import type { Check } from "./check";

/** A statement's figure converts from its unit to the trait's unit. */
export const unitsConvert: Check = (record) =>
  traitsOf(record).flatMap(({ trait, statements }) =>
    statements.flatMap(({ path, statement }) => {
      if (!hasValue(statement) || statement.unit === undefined) return [];
      try {
        inTraitUnit(statement, trait);
        return [];
      } catch (error) {
        if (!(error instanceof InvalidInputError)) throw error;
        const expected = `a unit that converts to ${traitTable[trait].unit}`;
        return [{ path: `${path}.unit`, found: statement.unit, expected }];
      }
    }),
  );
