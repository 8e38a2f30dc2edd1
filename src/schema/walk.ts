import { splitPath, traitPaths } from "../species/traits";
import type { SourceReference, Statement, TraitPath } from "../species/types";

type Fields = Readonly<Record<string, unknown>>;

/** The statements of one trait, at one place of a record. */
export interface TraitAt {
  readonly trait: TraitPath;
  /** `water.temperature` or `forms.long-fin.appearance.longFins`. */
  readonly path: string;
  /** The statements that are objects, as far as they can be read, each with its place in the list. */
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
    const statements = list.flatMap((statement, index) =>
      isFields(statement) ? [{ path: `${path}[${index}]`, statement: readable(statement) }] : [],
    );
    return [{ trait, path, statements }];
  });
}

/** How deep the fields of a value may lie: `value.avoid.min`. */
const depthOfValues = 2;

/** A statement of plain fields, so that checks may compare and convert them; the schema reports all others. */
function readable(statement: Fields): Statement<unknown> {
  const fields = Object.entries(statement).map(([key, held]) => [
    key,
    plain(held, key === "value" ? depthOfValues : 0),
  ]);
  return Object.fromEntries(fields);
}

/** Texts, finite numbers and truth values as they are, objects down to a depth; null for all else. */
function plain(held: unknown, depth: number): unknown {
  if (typeof held === "number") return Number.isFinite(held) ? held : null;
  if (held === undefined || typeof held === "string" || typeof held === "boolean") return held;
  if (!isFields(held) || depth === 0) return null;
  return Object.fromEntries(Object.entries(held).map(([key, inner]) => [key, plain(inner, depth - 1)]));
}

/** The sources of a record that are objects. */
export function sourcesOf(record: Fields): Readonly<Record<string, SourceReference>> {
  const entries = Object.entries(fieldsOf(record.sources)).filter(([, source]) => isFields(source));
  return Object.fromEntries(entries) as Record<string, SourceReference>;
}
