import { listOf, objectOf, refusal } from "../errors";
import type { RangeColumns } from "./columns";

/** The columns themselves, or an {@link InvalidInputError} where they are none, or not of one length. */
export function checkedColumns(columns: RangeColumns): RangeColumns {
  const { ids, min, max } = objectOf(columns, "columns", "columns { ids, min, max }");
  const { length } = listOf(ids, "columns.ids");
  for (const [name, column] of Object.entries({ min, max })) {
    if (!(column instanceof Float64Array)) throw refusal(`columns.${name}`, "a Float64Array", column);
    if (column.length !== length)
      throw refusal(`columns.${name}`, "as many as there are ids", column.length, "conflict");
  }
  return columns;
}
