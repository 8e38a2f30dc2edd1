import { listOf, objectOf } from "../../checks";
import { refusal } from "../../errors";
import type { RangeColumns } from "./columns";

/**
 * The columns themselves, or an {@link InvalidInputError} where they are none, not of one length, or hold what is no range: a
 * reversed one, or an end that is no number.
 */
export function checkedColumns(columns: RangeColumns): RangeColumns {
  const { ids, min, max } = objectOf(columns, "columns", "columns { ids, min, max }");
  const { length } = listOf(ids, "columns.ids");
  for (const [name, column] of Object.entries({ min, max })) {
    if (!(column instanceof Float64Array)) throw refusal(`columns.${name}`, "a Float64Array", column);
    if (column.length !== length)
      throw refusal(`columns.${name}`, "as many as there are ids", column.length, "conflict");
  }
  for (let index = 0; index < length; index++) {
    const low = min[index] ?? Number.NaN;
    const high = max[index] ?? Number.NaN;
    if (!(low <= high)) throw refusal(`columns.max[${index}]`, `${low} or more`, high, "range");
  }
  return columns;
}
