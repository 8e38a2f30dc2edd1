import { listOf, objectOf } from "../../checks";
import { splitPath } from "../traits/path";
import type { StatedValue, TraitPath } from "../traits/values";
import type { Statement, Statements } from "./statement";

/** A statement with a value. */
export type Stated<Value = unknown> = Statement<Value> & { readonly value: NonNullable<Value> };

/**
 * The statements of one trait, as a record or one of its forms holds them; none where nobody stated it.
 *
 * @throws InvalidInputError where there is no such trait, or where what stands there are no statements.
 *
 * @example
 * ```ts
 * import { recordById } from "vivary/evidence";
 * import { statementsOf } from "vivary/species";
 *
 * const record = recordById("puntigrus-tetrazona");
 * record && statementsOf(record, "social.living"); // => [{ by: "usgs", value: "shoal" }]
 * ```
 */
export function statementsOf<Path extends TraitPath>(
  record: Statements,
  path: Path,
): readonly Statement<StatedValue<Path>>[] {
  const [section, name] = splitPath(path);
  const traits = objectOf(record, "record")[section];
  if (traits === undefined) return [];
  const held: unknown = Reflect.get(objectOf(traits, section), name);
  if (held === undefined) return [];
  const statements = listOf(held as readonly Statement<StatedValue<Path>>[], path);
  statements.forEach((statement, index) => {
    objectOf(statement, `${path}[${index}]`);
  });
  return statements;
}

/** Whether a statement says what the trait is, rather than only informing a reader. */
export function hasValue<Value>(statement: Statement<Value>): statement is Stated<Value> {
  return statement.value !== undefined && statement.value !== null;
}
