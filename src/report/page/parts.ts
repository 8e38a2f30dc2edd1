/** A name of an animal, and of which species or form it is, so that it can lead to its page. */
export interface NamedAnimal {
  readonly name: string;
  /** The accepted scientific name; empty where the name is that one. */
  readonly scientific: string;
  readonly id: string;
  readonly form?: string | undefined;
}

/** A text as it stands, or one in which animals are named. */
export type Cell = string | readonly (string | NamedAnimal)[];

/** A part of a section, as a reader meets it. */
export type Part =
  | { readonly as: "paragraph"; readonly text: string }
  | { readonly as: "list"; readonly title?: string | undefined; readonly items: readonly Cell[] }
  /** Terms, each with what is said of it. */
  | { readonly as: "terms"; readonly title?: string | undefined; readonly rows: readonly Term[] }
  | {
      readonly as: "table";
      readonly title: string;
      readonly columns: readonly string[];
      /** Whether a row in plain text needs the names of its columns. */
      readonly named: boolean;
      readonly rows: readonly (readonly string[])[];
    };

export type Term = readonly [term: string, text: string];

/** A section of a page. */
export interface Section {
  /** The same in every language, so that addresses last. */
  readonly id: string;
  readonly heading: string;
  readonly parts: readonly Part[];
}

/** The page of a species or form. */
export interface Page {
  readonly title: string;
  /** The accepted scientific name. */
  readonly scientific: string;
  /** Author, family and order. */
  readonly belongs: string;
  readonly lead: readonly Part[];
  readonly sections: readonly Section[];
  /** The language as a BCP 47 tag. */
  readonly language: string;
}

/** A paragraph of the sentences that there are; none where there are none. */
export function paragraph(...sentences: readonly (string | false | undefined)[]): readonly Part[] {
  const told = sentences.filter((sentence) => typeof sentence === "string" && sentence !== "");
  return told.length > 0 ? [{ as: "paragraph", text: told.join(" ") }] : [];
}

/** A list of the items that there are; none where there are none. */
export const list = (items: readonly Cell[], title?: string): readonly Part[] =>
  items.length > 0 ? [{ as: "list", title, items }] : [];

/** Terms that are told; none where there are none. */
export const terms = (rows: readonly Term[], title?: string): readonly Part[] =>
  rows.length > 0 ? [{ as: "terms", title, rows }] : [];

/** A table; none without rows. Columns in which nothing stands are left out. */
export function table(
  title: string,
  columns: readonly string[],
  rows: readonly (readonly string[])[],
  named = true,
): readonly Part[] {
  if (rows.length === 0) return [];
  const used = columns.flatMap((_, index) => (rows.some((row) => row[index] !== "") ? index : []));
  const kept = <Item>(items: readonly Item[]) => used.flatMap((index) => items[index] ?? []);
  return [{ as: "table", title, named, columns: kept(columns), rows: rows.map((row) => kept(row)) }];
}

/** A section, unless it says nothing. */
export const section = (
  id: string,
  heading: string,
  ...parts: readonly (readonly Part[])[]
): readonly Section[] => {
  const told = parts.flat();
  return told.length > 0 ? [{ id, heading, parts: told }] : [];
};
