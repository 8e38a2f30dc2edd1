import { type AdultLength, type Fact, splitPath, type TraitPath, traitPaths } from "../species";
import type { AssessedParty } from "./party";

/** A party as the engine reads it: its facts by trait, looked up once. */
export interface Subject {
  readonly party: AssessedParty;
  /** Its place among the verdict's parties. */
  readonly index: number;
  readonly facts: ReadonlyMap<TraitPath, Fact<unknown>>;
  /** The values a source supports, the adopted one first, of each trait for which there are several. */
  readonly disputed: ReadonlyMap<TraitPath, readonly unknown[]>;
  /** The traits of which every number was found finite. */
  readonly vetted: Set<TraitPath>;
}

const keys = /* @__PURE__ */ traitPaths.map((path) => [path, ...splitPath(path)] as const);

/** A party with its facts by trait. */
export function subjectOf(party: AssessedParty, index: number): Subject {
  const sections = party.species as unknown as Record<string, Record<string, Fact<unknown>> | undefined>;
  const facts = new Map<TraitPath, Fact<unknown>>();
  const disputed = new Map<TraitPath, readonly unknown[]>();
  for (const [path, section, name] of keys) {
    const fact = sections[section]?.[name];
    if (!fact) continue;
    facts.set(path, fact);
    const values = standingValues(path, fact);
    if (values.length > 1) disputed.set(path, values);
  }
  return { party, index, facts, disputed, vetted: new Set() };
}

/**
 * Lengths stand for themselves, and for the shortest and the longest that any source and any span allows: what rules
 * read of a length, they read the same way up.
 */
function standingValues(path: TraitPath, { value, also }: Fact<unknown>): readonly unknown[] {
  const values = also ? [value, ...also] : [value];
  if (path !== "size.adultLength") return values;
  const sources = values as readonly (readonly AdultLength[])[];
  if (!also && sources[0]?.every(({ total }) => total.min === total.max)) return values;
  return sources.every((lengths) => groupsOf(lengths) === groupsOf(sources[0]))
    ? [value, atEnd(sources, "min"), atEnd(sources, "max")]
    : [value, ...sources.flatMap((lengths) => [atEnd([lengths], "min"), atEnd([lengths], "max")])];
}

/** What a source measured of whom. */
function groupsOf(lengths: readonly AdultLength[] = []): string {
  return lengths.map(({ as, sex, measure }) => [as, sex, measure].join(" ")).join(", ");
}

/** Each length at the shortest or the longest that one of the sources gives it. */
function atEnd(sources: readonly (readonly AdultLength[])[], end: "min" | "max"): readonly AdultLength[] {
  const [first = []] = sources;
  return first.map((length, index) => {
    const ends = sources.map((lengths) => lengths[index]?.total[end] ?? length.total[end]);
    const at = Math[end](...ends);
    return { ...length, total: { min: at, max: at } };
  });
}
