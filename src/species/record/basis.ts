import { listOf, objectOf, oneOf } from "../../checks";
import { refusal } from "../../errors";
import { frozen } from "../../frozen";
import type { RecordSources, SourceReference } from "./record";
import type { Statement } from "./statement";

/**
 * How well a value is supported, the strongest first: `published` was read in its source, `curated` blends several,
 * `observed` is a keeper's signed observation, `memory` was recalled, `common-practice` is the trade's word, `derived`
 * was computed, estimated, or stands in for what nobody stated.
 */
export type Basis = "published" | "curated" | "observed" | "memory" | "common-practice" | "derived";

/** The bases from the strongest to the weakest. */
export const bases: readonly Basis[] = /* @__PURE__ */ frozen([
  "published",
  "curated",
  "observed",
  "memory",
  "common-practice",
  "derived",
] as const);

/**
 * How well one statement is supported, by the sources of its record. An estimate, and the figure of a relative that
 * stands in, are derived whoever printed them.
 *
 * @throws InvalidInputError for what is no statement or are no sources.
 */
export function basisOf(statement: Statement, sources: RecordSources): Basis {
  const { by, estimate } = objectOf(statement, "statement");
  const source = sourceOf(statement, sources);
  if (estimate || source?.of) return "derived";
  if (by === "common-practice") return by;
  if (by === "curator") return "curated";
  if (source?.observed) return "observed";
  return source?.memory ? "memory" : "published";
}

/** The strongest of several bases; undefined where there are none. */
export const strongestBasis = (given: readonly Basis[]): Basis | undefined =>
  bases.find((basis) => given.includes(basis));

/**
 * The weakest of several bases.
 *
 * @throws InvalidInputError for an unknown basis, or for none at all.
 */
export function weakestBasis(given: readonly Basis[]): Basis {
  let strength = -1;
  for (const basis of listOf(given, "bases"))
    strength = Math.max(strength, bases.indexOf(oneOf(basis, bases, "basis")));
  const weakest = bases[strength];
  if (weakest === undefined) throw refusal("bases", "at least one basis", given, "range");
  return weakest;
}

/** The source a statement goes back to: mirrors of one database have one root. */
export function rootOf(statement: Statement, sources: RecordSources): string {
  const source = sourceOf(statement, sources);
  return source?.root ?? source?.cite ?? statement.by;
}

function sourceOf({ by }: Statement, sources: RecordSources): SourceReference | undefined {
  return Object.hasOwn(objectOf(sources, "sources"), by) ? sources[by] : undefined;
}
