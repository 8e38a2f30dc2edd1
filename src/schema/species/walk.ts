import { isObject } from "../../is-object";
import {
  type RecordSources,
  type SourceReference,
  type Statement,
  splitPath,
  type TraitPath,
  traitPaths,
} from "../../species";
import { type Fields, fieldsOf, type Path } from "../fields";

/** The statements of one trait, at one place of a record. */
export interface TraitAt {
  readonly trait: TraitPath;
  /** `["water", "temperature"]` or `["forms", "long-fin", "appearance", "longFins"]`. */
  readonly path: Path;
  /** The statements that are objects, as far as they can be read, each with its place in the list. */
  readonly statements: readonly { readonly path: Path; readonly statement: Statement }[];
}

/** Every trait that a record or one of its forms states, whatever else is wrong with the record. */
export function traitsOf(record: Fields): readonly TraitAt[] {
  const forms = Object.entries(fieldsOf(record.forms)).flatMap(([id, form]) =>
    traitsIn(fieldsOf(form), ["forms", id]),
  );
  return [...traitsIn(record, []), ...forms];
}

function traitsIn(holder: Fields, above: Path): readonly TraitAt[] {
  return traitPaths.flatMap((trait) => {
    const [section, name] = splitPath(trait);
    const list = fieldsOf(holder[section])[name];
    if (!Array.isArray(list)) return [];
    const path = [...above, section, name];
    const statements = list.flatMap((statement, index) =>
      isObject(statement) ? [{ path: [...path, index], statement: readable(statement) }] : [],
    );
    return [{ trait, path, statements }];
  });
}

/** A statement whose fields can be compared: objects stand in its value alone, null for all others. */
function readable(statement: Fields): Statement {
  const fields = Object.entries(statement).map(([key, held]) => [
    key,
    typeof held === "object" && key !== "value" ? null : held,
  ]);
  return Object.fromEntries(fields);
}

/** The sources of a record that are objects. */
export function sourcesOf(record: Fields): RecordSources {
  const entries = Object.entries(fieldsOf(record.sources)).filter(([, source]) => isObject(source));
  return Object.fromEntries(entries) as Record<string, SourceReference>;
}
