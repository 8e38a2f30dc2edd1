import { traitDefinitions } from "../traits/definitions";
import type { TraitPath } from "../traits/values";
import { type Basis, bases, basisOf, rootOf } from "./basis";
import type { RecordSources } from "./record";
import type { Statement, StatementTopic, StatementTopics } from "./statement";
import { hasValue, type Stated } from "./statements";
import { inTraitUnit } from "./trait-unit";

/** How a figure of water was got, where the source says. */
type Test = Omit<StatementTopics["figures"], "as" | "stage">;

/** What one source said, in the trait's own unit. */
export interface SourceVoice<Value = unknown> extends Test {
  /** A key of the record's `sources`, or `common-practice`, or `curator`. */
  readonly by: string;
  /** The source at the root; mirrors of one database share it. */
  readonly root: string;
  readonly basis: Basis;
  readonly value: Value;
  /** Why it does not count, if it does not. */
  readonly setAside?: string | undefined;
}

/** What sources said about one meaning, sex, stage, measure and number of animals. */
export interface StatementGroup<Value = unknown> extends StatementTopic {
  /** Those that stand, the one to use first; one a root, or all of a trait whose statements add up. */
  readonly standing: readonly SourceVoice<Value>[];
  readonly setAside: readonly SourceVoice<Value>[];
}

/** What a statement is about, as a key. No stage means grown animals. */
export function topicKey(statement: Statement, path: TraitPath): string {
  const { as, sex, stage, measure, for: count } = topicOf(statement, path);
  return [as, sex, stage === "adult" ? "" : stage, measure, count].join("|");
}

/** What a statement is about; of a least room, the number of animals that stands in its value. */
function topicOf(statement: Statement, path: TraitPath): StatementTopic {
  const { as, sex, stage, measure, value } = statement;
  const count: unknown =
    traitDefinitions[path].way === "rooms" && typeof value === "object" && value !== null
      ? Reflect.get(value, "for")
      : undefined;
  return {
    ...(as && { as }),
    ...(sex && { sex }),
    ...(stage && { stage }),
    ...(measure && { measure }),
    ...(typeof count === "number" && { for: count }),
  };
}

/**
 * The statements of a trait by what they are about, in the order of the record, those of which none counts last.
 * The one to use is the one with `adopt`, else the best supported: read, curated, observed, recalled, common practice,
 * derived; of equals the one whose `by` sorts first, so that the order of lines decides nothing.
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
    const key = topicKey(statement, path);
    const group = byTopic.get(key);
    if (group) group.push(statement);
    else byTopic.set(key, [statement]);
  }
  return new Map([...byTopic].map(([key, group]) => [key, groupOf(group, path, sources)]));
}

function groupOf(group: readonly Stated[], path: TraitPath, sources: RecordSources): StatementGroup {
  const voice = (statement: Stated): SourceVoice => ({
    by: statement.by,
    root: rootOf(statement, sources),
    basis: basisOf(statement, sources),
    value: inTraitUnit(statement, path),
    ...testOf(statement),
    ...(statement.setAside && { setAside: statement.setAside }),
  });
  const counting = group.filter(({ setAside }) => !setAside);
  const addsUp = traitDefinitions[path].way === "all";
  return {
    ...(group[0] && topicOf(group[0], path)),
    standing: addsUp ? counting.map(voice) : oneOfEachRoot(ranked(counting, sources).map(voice)),
    setAside: group.filter(({ setAside }) => setAside).map(voice),
  };
}

function testOf({ precision, endpoint, acclimatedAt, n }: Statement): Test {
  return {
    ...(precision && { precision }),
    ...(endpoint && { endpoint }),
    ...(acclimatedAt !== undefined && { acclimatedAt }),
    ...(n !== undefined && { n }),
  };
}

/** Adopted statements first, then by basis, then by the key of their source; what one source says, by the value and the test. */
function ranked(statements: readonly Stated[], sources: RecordSources): readonly Stated[] {
  const rank = (statement: Stated) => (statement.adopt ? -1 : bases.indexOf(basisOf(statement, sources)));
  const name = ({ by, value, unit = "", acclimatedAt }: Stated) =>
    [by, JSON.stringify(value), unit, acclimatedAt].join("|");
  return [...statements].sort((a, b) => rank(a) - rank(b) || (name(a) < name(b) ? -1 : 1));
}

/** Of several voices with one root only the first; of spans each that states an end which those before it leave open. */
function oneOfEachRoot(voices: readonly SourceVoice[]): readonly SourceVoice[] {
  return voices.filter(({ root, value }, index) => {
    const before = voices.slice(0, index).filter((voice) => voice.root === root);
    const told = new Set(before.flatMap((voice) => endsOf(voice.value)));
    return before.length === 0 || endsOf(value).some((end) => !told.has(end));
  });
}

/** The ends that a span states; none of what is no span. */
function endsOf(value: unknown): readonly string[] {
  if (typeof value !== "object" || value === null) return [];
  return ["min", "max"].filter((end) => typeof Reflect.get(value, end) === "number");
}
