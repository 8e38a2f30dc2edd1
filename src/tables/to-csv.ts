import { listOf, objectOf } from "../checks";
import { refusal } from "../errors";
import type { Row } from "./table";

/**
 * Rows as CSV by RFC 4180: a header of the names of the columns, lines that end in CR and LF, and quotes around cells that
 * need them. Numbers stand as JavaScript writes them, exact to the last digit; what is `null` is an empty cell, in a table
 * of one column between quotes, for many readers pass over empty lines. As UTF-8 it is the file that `dataPackage` describes.
 *
 * @param rows - Rows of one table.
 * @param columns - The names of the columns, in order; else those of the first row. Needed where there may be no row.
 * @throws InvalidInputError for what are no rows, for a row with another column, and for a cell that is no number, text or
 * truth value, or no finite number.
 *
 * @example
 * ```ts
 * import { toCsv } from "vivary/tables";
 *
 * toCsv([{ name: "neon tetra", max: 26 }, { name: "harlequin, or rasbora", max: null }]); // => "name,max\r\nneon tetra,26\r\n\"harlequin, or rasbora\",\r\n"
 * ```
 */
export function toCsv(rows: readonly Row[], columns?: readonly string[]): string {
  const [first] = listOf(rows, "rows");
  const names = listOf(
    columns ?? Object.keys(first === undefined ? {} : objectOf(first, "rows[0]")),
    "columns",
  );
  if (names.length === 0) return "";
  const lines = rows.map((row, index) => {
    const strange = Object.keys(objectOf(row, `rows[${index}]`)).find((name) => !names.includes(name));
    if (strange !== undefined)
      throw refusal(`rows[${index}]`, `the columns ${names.join(", ")}`, strange, "conflict");
    return names.map((name) => cellOf(row[name], `rows[${index}].${name}`));
  });
  return [names.map(quoted), ...lines].map((cells) => `${cells.join(",") || noText}\r\n`).join("");
}

/** The empty cell of a table of one column: without quotes it were an empty line, which many readers pass over. */
const noText = '""';

function cellOf(value: unknown, subject: string): string {
  if (value === null || value === undefined) return "";
  if (typeof value === "string") return quoted(value);
  if (typeof value === "boolean" || Number.isFinite(value)) return String(value);
  throw refusal(subject, "a text, a finite number, true, false or null", value);
}

const quoted = (text: string) => (/[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
