import { convert, type Unit } from "../../units";
import { traitDefinitions } from "../traits/definitions";
import type { TraitPath } from "../traits/values";
import type { Stated } from "./statements";

/** The value of a statement, its sizes in the trait's unit. */
export function inTraitUnit({ value, unit: given }: Stated, path: TraitPath): NonNullable<unknown> {
  const { unit: own } = traitDefinitions[path];
  if (!given || !own || given === own) return value;
  return withSizes(value, (size) => convert(size, given as Unit, own as Unit));
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
