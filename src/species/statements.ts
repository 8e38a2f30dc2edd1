import { splitPath } from "./traits";
import type { Basis, SourceReference, Statement, Statements, TraitPath } from "./types";

type Sources = Readonly<Record<string, SourceReference>>;

/** A statement with a value. */
export type Stated = Statement<unknown> & { readonly value: NonNullable<unknown> };

/** The statements of one trait, as the record holds them. */
export function statementsOf(record: Statements, path: TraitPath): readonly Statement<unknown>[] {
  const [section, name] = splitPath(path);
  const inSection = (record as Readonly<Record<string, Readonly<Record<string, unknown>> | undefined>>)[
    section
  ];
  return (inSection?.[name] ?? []) as readonly Statement<unknown>[];
}

/** Whether a statement says what the trait is, rather than only informing a reader. */
export function hasValue(statement: Statement<unknown>): statement is Stated {
  return statement.value !== undefined && statement.value !== null;
}

/** The bases from the strongest to the weakest. */
const strength: readonly Basis[] = ["published", "curated", "memory", "common-practice"];

/** How well one statement is supported. */
export function basisOf(statement: Statement<unknown>, sources: Sources): Basis {
  if (statement.by === "common-practice") return "common-practice";
  if (statement.by === "curator") return "curated";
  return sources[statement.by]?.memory ? "memory" : "published";
}

/** The weakest of several bases. */
export function weakest(bases: readonly Basis[]): Basis {
  return bases.reduce((weak, basis) => (strength.indexOf(basis) > strength.indexOf(weak) ? basis : weak));
}

/** The source a statement goes back to: mirrors of one database have one root. */
export function rootOf(statement: Statement<unknown>, sources: Sources): string {
  const source = sources[statement.by];
  return source?.root ?? source?.cite ?? statement.by;
}

/** Statements about the same thing: one meaning, sex, stage and measure. No stage means grown animals. */
export function groupKey({ as, sex, stage, measure }: Statement<unknown>): string {
  return [as, sex, stage === "adult" ? "" : stage, measure].join("|");
}

/** Statements by what they are about, in the order of the record. */
export function grouped<S extends Statement<unknown>>(
  statements: readonly S[],
): ReadonlyMap<string, readonly S[]> {
  const groups = new Map<string, S[]>();
  for (const statement of statements) {
    const key = groupKey(statement);
    groups.set(key, [...(groups.get(key) ?? []), statement]);
  }
  return groups;
}

/**
 * The statements of one group that stand, the one to use first: adopted, else read, curated, recalled, common
 * practice, else in the record's order. Of several with one root only the first stands.
 */
export function standing(group: readonly Stated[], sources: Sources): readonly Stated[] {
  const rank = (statement: Stated) => (statement.adopt ? -1 : strength.indexOf(basisOf(statement, sources)));
  const ranked = group.filter((statement) => !statement.setAside).sort((a, b) => rank(a) - rank(b));
  const roots = ranked.map((statement) => rootOf(statement, sources));
  return ranked.filter((_, index) => roots.indexOf(roots[index] as string) === index);
}
