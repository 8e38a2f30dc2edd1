import type { Statement, TraitPath } from "../../../species";
import { hasValue, inTraitUnit, plausibleSpans, sizeFields, traitDefinitions } from "../../../species/inner";
import type { Check } from "../../checked";
import { fieldsOf, type Path } from "../../fields";
import { traitsOf } from "../walk";
import { converts } from "./units-convert";

/** Figures lie where such a figure can lie, so that a slip of unit or of a decimal point shows. */
export const figuresArePlausible: Check = (record) =>
  traitsOf(record).flatMap(({ trait, statements }) => {
    const { min, max } = plausibleSpans[trait] ?? {};
    const { unit = "" } = traitDefinitions[trait];
    return statements.flatMap(({ path, statement }) =>
      implausible(statement, trait).map(({ field, figure: found }) => ({
        path: [...path, "value", ...field],
        code: "range",
        found,
        expected: `${min} to ${max} ${unit === "1" ? "" : unit}`.trim(),
        explanation:
          explanations[unit] ?? "If the source uses another unit, name it in the statement's unit.",
      })),
    );
  });

/** What to look for where no unit can be another one. */
const explanations: Readonly<Record<string, string>> = {
  "": "Look for a decimal point that was lost.",
  "1": "A share is told as a part of one: a fifth, or 20 %, as 0.2.",
};

/** A figure of a value, and in which of its fields it stands. */
interface Figure {
  readonly field: Path;
  readonly figure: number;
}

/** The figures of a statement that lie where none can, of shares only those that are shares: the rest their shape tells. */
function implausible(statement: Statement, trait: TraitPath): readonly Figure[] {
  const plausible = plausibleSpans[trait];
  if (!plausible || !hasValue(statement) || statement.setAside || !converts(statement, trait)) return [];
  const isShare = traitDefinitions[trait].unit === "1";
  return figuresIn(inTraitUnit(statement, trait)).filter(
    ({ figure }) =>
      (figure < plausible.min || figure > plausible.max) && !(isShare && (figure < 0 || figure > 1)),
  );
}

function figuresIn(value: unknown): readonly Figure[] {
  if (typeof value === "number") return [{ field: [], figure: value }];
  const fields = fieldsOf(value);
  return sizeFields.flatMap((field) => {
    const figure = fields[field];
    return typeof figure === "number" ? [{ field: [field], figure }] : [];
  });
}
