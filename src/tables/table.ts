import type { Range } from "../ranges";

/** What the cells of a column hold, by the names that Table Schema gives them. */
export type ColumnType = "string" | "number" | "integer" | "boolean";

/** A column of a table. */
export interface Column {
  readonly type: ColumnType;
  /** What its cells say, numbers with their unit. */
  readonly about: string;
  /** No cell of it is empty. */
  readonly required?: true;
  /** The words that its cells may hold. */
  readonly words?: readonly string[];
  /** The term of an open vocabulary that means the same, as a URI. */
  readonly term?: string;
  /** What its numbers lie within. */
  readonly within?: Partial<Range>;
}

/** A table: its columns in order, and how its rows are told apart. */
export interface Table {
  /** Also the name of its file. */
  readonly name: string;
  /** What a row is. */
  readonly about: string;
  readonly columns: Readonly<Record<string, Column>>;
  /** The columns that tell rows apart. */
  readonly key: readonly string[];
  /** Columns that hold the key of a row in another table, with the name of that table. */
  readonly refers: Readonly<Record<string, string>>;
}

/** What the cells of each type are in a program. */
interface Held {
  readonly string: string;
  readonly number: number;
  readonly integer: number;
  readonly boolean: boolean;
}

/** A row with the columns of a table, every one of them there; `null` in a cell that is empty. */
export type RowWith<Columns extends Readonly<Record<string, Column>>> = {
  readonly [Name in keyof Columns]:
    | Held[Columns[Name]["type"]]
    | (Columns[Name] extends { readonly required: true } ? never : null);
};

/** A row of any table: numbers, truth values and words, no lists and no objects; `null` where a cell is empty. */
export type Row = Readonly<Record<string, string | number | boolean | null>>;

/** Several words in one cell, as Darwin Core recommends; `null` for none. */
export const listed = (words: readonly string[]): string | null =>
  words.length > 0 ? words.join(" | ") : null;

/** A row with its cells in the order of the columns. */
export const inOrder = <Columns extends Readonly<Record<string, Column>>>(
  columns: Columns,
  row: RowWith<Columns>,
): RowWith<Columns> =>
  Object.fromEntries(Object.keys(columns).map((name) => [name, row[name]])) as RowWith<Columns>;
