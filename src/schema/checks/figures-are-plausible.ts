import { hasValue } from "../../species/statements";
import { inTraitUnit } from "../../species/trait-unit";
import { traitTable } from "../../species/traits";
import { fieldsOf, traitsOf } from "../walk";
import type { Check } from "./check";
import { unitsConvert } from "./units-convert";

/** Figures lie where such a figure can lie, so that a slip of unit or of a decimal point shows. */
export const figuresArePlausible: Check = (record) => {
  const unreadable = new Set(unitsConvert(record).map(({ path }) => path));
  return traitsOf(record).flatMap(({ trait, statements }) => {
    const { plausible, unit = "" } = traitTable[trait];
    if (!plausible) return [];
    return statements.flatMap(({ path, statement }) => {
      if (!hasValue(statement) || statement.setAside || unreadable.has(`${path}.unit`)) return [];
      const implausible = figuresIn(inTraitUnit(statement, trait).value).filter(
        (figure) => figure < plausible.min || figure > plausible.max,
      );
      return implausible.map((found) => ({
        path: `${path}.value`,
        found,
        expected: `${plausible.min} to ${plausible.max} ${unit}`.trim(),
        explanation: "If the source uses another unit, name it in the statement's unit.",
      }));
    });
  });
};

function figuresIn(value: unknown): readonly number[] {
  if (typeof value === "number") return [value];
  const { min, max, least, area, greatest } = fieldsOf(value);
  return [min, max, least, area, greatest].filter((figure) => typeof figure === "number");
}
