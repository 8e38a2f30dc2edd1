import { type AdultLength, type Fact, type TraitPath, traitPaths } from "../species";
import { splitPath } from "../species/traits";
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

/** A length whose total is only known as a span stands for its shortest and its longest too. */
function standingValues(path: TraitPath, { value, also }: Fact<unknown>): readonly unknown[] {
  const values = also ? [value, ...also] : [value];
  if (path !== "size.adultLength") return values;
  const ends = (values as readonly (readonly AdultLength[])[]).map(endsOf);
  return [value, ...ends.flatMap((lengths, index) => (index === 0 && lengths.length === 1 ? [] : lengths))];
}

/** Lengths as they are, or at the shortest and the longest they may be. */
function endsOf(lengths: readonly AdultLength[]): readonly (readonly AdultLength[])[] {
  const isSpan = lengths.some(({ total }) => total.min < total.max);
  return isSpan ? [narrowed(lengths, "min"), narrowed(lengths, "max")] : [lengths];
}

function narrowed(lengths: readonly AdultLength[], end: "min" | "max"): readonly AdultLength[] {
  return lengths.map((length) => ({ ...length, total: { min: length.total[end], max: length.total[end] } }));
}
