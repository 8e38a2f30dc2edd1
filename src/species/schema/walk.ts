import { splitPath, traitPaths } from "../traits";
import type { SourceReference, Statement, TraitPath } from "../types";

type Fields = Readonly<Record<string, unknown>>;

/** The statements of one trait, at one place of a record. */
export interface TraitAt {
  readonly trait: TraitPath;
  /** `water.temperature` or `forms.long-fin.appearance.longFins`. */
  readonly path: string;
  /** The statements that are objects, each with its place in the list. */
  readonly statements: readonly { readonly path: string; readonly statement: Statement<unknown> }[];
}

const isFields = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** The fields of an object; none of anything else. */
export const fieldsOf = (value: unknown): Fields => (isFields(value) ? value : {});

/** Every trait that a record or one of its forms states, whatever else is wrong with the record. */
export function traitsOf(record: Fields): readonly TraitAt[] {
  const forms = Object.entries(fieldsOf(record.forms)).flatMap(([id, form]) =>
    traitsIn(fieldsOf(form), `forms.${id}.`),
  );
  return [...traitsIn(record, ""), ...forms];
}

function traitsIn(holder: Fields, prefix: string): readonly TraitAt[] {
  return traitPaths.flatMap((trait) => {
    const [section, name] = splitPath(trait);
    const list = fieldsOf(holder[section])[name];
    if (!Array.isArray(list)) return [];
    const path = `${prefix}${trait}`;
    const statements = list.map((statement, index) => ({ path: `${path}[${index}]`, statement }));
    return [{ trait, path, statements: statements.filter(({ statement }) => isFields(statement)) }];
  });
}

/** The sources of a record that are objects. */
export function sourcesOf(record: Fields): Readonly<Record<string, SourceReference>> {
  const entries = Object.entries(fieldsOf(record.sources)).filter(([, source]) => isFields(source));
  return Object.fromEntries(entries) as Record<string, SourceReference>;
}
