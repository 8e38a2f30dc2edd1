import { convert, type Unit } from "../units";
import type { Stated } from "./statements";
import { traitTable } from "./traits";
import type { TraitPath } from "./types";

/** The statement with its numbers in the trait's unit. */
export function inTraitUnit(statement: Stated, path: TraitPath): Stated {
  const { unit: own } = traitTable[path];
  const { unit: given, value } = statement;
  if (!given || !own || given === own) return statement;
  return { ...statement, value: mapNumbers(value, (number) => convert(number, given as Unit, own as Unit)) };
}

/** The sizes within a value; the other numbers are counts. */
const sizes = ["min", "max", "least", "area", "greatest"];

/** Changes a number, or the sizes within an object. */
function mapNumbers(value: unknown, change: (number: number) => number): NonNullable<unknown> {
  if (typeof value === "number") return change(value);
  const entries = Object.entries(value as Record<string, unknown>);
  return Object.fromEntries(
    entries.map(([key, held]) => [
      key,
      typeof held === "number" && sizes.includes(key) ? change(held) : held,
    ]),
  );
}
