import { refusal } from "../../errors";
import { ends } from "../ends";
import type { PartialRange } from "../range";
import { checkedColumns } from "./checked-columns";
import type { RangeColumns } from "./columns";

/**
 * One against all: who has a range that meets the one given. Ranges that only touch meet.
 *
 * Takes one pass: time grows with the number of ranges.
 *
 * @param columns - The ranges of all, as {@link rangeColumns} gives them.
 * @param range - A range in the unit of the axis; it may be one-sided.
 * @returns The ids of those that meet it, in the order of the columns.
 * @throws InvalidInputError for what are no columns, where one of their ranges is reversed or has an end that is no number,
 * and if the range given is reversed, states no end, or an end is not finite.
 *
 * @example
 * ```ts
 * import { allSpecies } from "vivary/catalog";
 * import { rangeColumns, sharing } from "vivary/ranges";
 *
 * const temperatures = rangeColumns(allSpecies, "water.temperature");
 * sharing(temperatures, { max: 16 }).includes("tanichthys-albonubes"); // => true
 * ```
 */
export function sharing(columns: RangeColumns, range: PartialRange): readonly string[] {
  const { ids, min, max } = checkedColumns(columns);
  const wanted = ends(range, "range");
  const found: string[] = [];
  for (let index = 0; index < min.length; index++) {
    if ((min[index] as number) <= wanted.max && (max[index] as number) >= wanted.min) {
      const id = ids[index];
      if (typeof id !== "string") throw refusal(`columns.ids[${index}]`, "a text", id);
      found.push(id);
    }
  }
  return found;
}
