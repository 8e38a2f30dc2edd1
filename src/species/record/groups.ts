import { traitDefinitions } from "../traits/definitions";
import type { TraitPath } from "../traits/values";
import { type Basis, bases, basisOf, rootOf } from "./basis";
import type { RecordSources } from "./record";
import type { Statement, StatementTopic } from "./statement";
import { hasValue, type Stated } from "./statements";
import { inTraitUnit } from "./trait-unit";

/** What one source said, in the trait's own unit. */
export interface SourceVoice<Value = unknown> {
  /** The source at the root; mirrors of one database share it. */
  readonly root: string;
  readonly basis: Basis;
  readonly value: Value;
  /** Why it does not count, if it does not. */
  readonly setAside?: string | undefined;
}

/** What sources said about one meaning, sex, stage and measure. */
export interface StatementGroup<Value = unknown> extends StatementTopic {
  /** Those that stand, the one to use first; one a root, or all of a trait whose statements add up. */
  readonly standing: readonly SourceVoice<Value>[];
  readonly setAside: readonly SourceVoice<Value>[];
}

/** What a statement is about, as a key. No stage means grown animals. */
export function topicKey({ as, sex, stage, measure }: StatementTopic): string {
  return [as, sex, stage === "adult" ? "" : stage, measure].join("|");
}

/**
 * The statements of a trait by what they are about, in the order of the record, those of which none counts last.
 * The one to use is the one with `adopt`, else one that was read, curated, recalled, common practice, else the first.
 */
export function groupsOf(
  statements: readonly Statement[],
  path: TraitPath,
  sources: RecordSources,
): ReadonlyMap<string, StatementGroup> {
  const stated = statements.filter((statement) => hasValue(statement));
  const counting = stated.filter(({ setAside }) => !setAside);
  const notCounting = stated.filter(({ setAside }) => setAside);
  const byTopic = new Map<string, Stated[]>();
  for (const statement of [...counting, ...notCounting]) {
    const group = byTopic.get(topicKey(statement));
    if (group) group.push(statement);
    else byTopic.set(topicKey(statement), [statement]);
  }
  return new Map([...byTopic].map(([key, group]) => [key, groupOf(group, path, sources)]));
}

function groupOf(group: readonly Stated[], path: TraitPath, sources: RecordSources): StatementGroup {
  const voice = (statement: Stated): SourceVoice => ({
    root: rootOf(statement, sources),
    basis: basisOf(statement, sources),
    value: inTraitUnit(statement, path),
    ...(statement.setAside && { setAside: statement.setAside }),
  });
  const counting = group.filter(({ setAside }) => !setAside);
  const addsUp = traitDefinitions[path].way === "all";
  return {
    ...topicOf(group[0]),
    standing: addsUp ? counting.map(voice) : oneOfEachRoot(ranked(counting, sources).map(voice)),
    setAside: group.filter(({ setAside }) => setAside).map(voice),
  };
}

function topicOf({ as, sex, stage, measure }: StatementTopic = {}): StatementTopic {
  return { ...(as && { as }), ...(sex && { sex }), ...(stage && { stage }), ...(measure && { measure }) };
}

/** Adopted statements first, then by basis; the record's order where they are equal. */
function ranked(statements: readonly Stated[], sources: RecordSources): readonly Stated[] {
  const rank = (statement: Stated) => (statement.adopt ? -1 : bases.indexOf(basisOf(statement, sources)));
  return [...statements].sort((a, b) => rank(a) - rank(b));
}

/** Of several voices with one root only the first. */
function oneOfEachRoot(voices: readonly SourceVoice[]): readonly SourceVoice[] {
  const roots = voices.map(({ root }) => root);
  return voices.filter(({ root }, index) => roots.indexOf(root) === index);
}
