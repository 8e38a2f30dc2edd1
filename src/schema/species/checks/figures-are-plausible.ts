import { hasValue, inTraitUnit, plausibleSpans, sizeFields, traitDefinitions } from "../../../species/inner";
import type { Check } from "../../checked";
import { fieldsOf } from "../../fields";
import { traitsOf } from "../walk";
import { converts } from "./units-convert";

/** Figures lie where such a figure can lie, so that a slip of unit or of a decimal point shows. */
export const figuresArePlausible: Check = (record) =>
  traitsOf(record).flatMap(({ trait, statements }) => {
    const plausible = plausibleSpans[trait];
    const { unit = "" } = traitDefinitions[trait];
    if (!plausible) return [];
    return statements.flatMap(({ path, statement }) => {
      if (!hasValue(statement) || statement.setAside || !converts(statement, trait)) return [];
      const implausible = figuresIn(inTraitUnit(statement, trait)).filter(
        (figure) => figure < plausible.min || figure > plausible.max,
      );
      return implausible.map((found) => ({
        path: [...path, "value"],
        code: "range",
        found,
        expected: `${plausible.min} to ${plausible.max} ${unit}`.trim(),
        explanation: unit
          ? "If the source uses another unit, name it in the statement's unit."
          : "Look for a decimal point that was lost.",
      }));
    });
  });

function figuresIn(value: unknown): readonly number[] {
  if (typeof value === "number") return [value];
  const fields = fieldsOf(value);
  return sizeFields.map((field) => fields[field]).filter((figure) => typeof figure === "number");
}
