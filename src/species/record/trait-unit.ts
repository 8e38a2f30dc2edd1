import { objectOf, oneOf } from "../../checks";
import { decimal } from "../../decimal";
import { convert, type Unit } from "../../units";
import { traitDefinitions } from "../traits/definitions";
import { traitPaths } from "../traits/path";
import type { TraitPath } from "../traits/values";
import type { Stated } from "./statements";

/**
 * The value of a statement, its sizes in the trait's unit.
 *
 * @throws InvalidInputError where the statement's unit does not convert, for what is no statement, and where there is
 * no such trait.
 */
export function inTraitUnit(statement: Stated, path: TraitPath): NonNullable<unknown> {
  const { value, unit: given } = objectOf(statement, "statement");
  const { unit: own } = traitDefinitions[oneOf(path, traitPaths, "trait")];
  if (!given || !own || given === own) return value;
  return withSizes(value, (size) => decimal(convert(size, given as Unit, own as Unit)));
}

/** The sizes that a value of fields may hold; its other numbers are counts. */
export const sizeFields = ["min", "max", "least", "area", "greatest"] as const;

/** Changes a size, or the sizes within an object. */
function withSizes(value: NonNullable<unknown>, change: (size: number) => number): NonNullable<unknown> {
  if (typeof value === "number") return change(value);
  if (typeof value !== "object") return value;
  const changed = sizeFields.flatMap((field) => {
    const size: unknown = Reflect.get(value, field);
    return typeof size === "number" ? [[field, change(size)]] : [];
  });
  return { ...value, ...Object.fromEntries(changed) };
}
