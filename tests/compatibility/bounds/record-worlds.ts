import {
  type Basis,
  basisOf,
  factAt,
  resolve,
  type SpeciesProfile,
  type SpeciesRecord,
  type Statement,
  type Statements,
  splitPath,
  type TraitPath,
  traitTable,
} from "../../../src/species";

/** A statement that is taken for its group. */
interface Taken {
  readonly topic: string;
  readonly statement: Statement;
}

/**
 * The records that a record may be in one trait: as it is; with one group replaced by another statement that stands; with
 * all that one source says. Read off the statements, apart from how the library resolves them.
 */
export function worldsIn(
  record: SpeciesRecord,
  path: TraitPath,
  form: string | undefined,
): readonly SpeciesRecord[] {
  const held = found.get(record) ?? new Map<string, readonly SpeciesRecord[]>();
  found.set(record, held);
  const key = `${path} ${form}`;
  const worlds = held.get(key) ?? worldsFound(record, path, form);
  held.set(key, worlds);
  return worlds;
}

const found = new WeakMap<SpeciesRecord, Map<string, readonly SpeciesRecord[]>>();

function worldsFound(
  record: SpeciesRecord,
  path: TraitPath,
  form: string | undefined,
): readonly SpeciesRecord[] {
  const { way } = traitTable[path];
  if (way === "all") return [record];
  const groups = [...standingGroups(record, path, form)].filter(([topic]) => !informs(topic));
  if (groups.every(([, statements]) => statements.length === 1)) return [record];
  const all = groups.flatMap(([topic, statements]) => statements.map((statement) => ({ topic, statement })));
  const oneReplaced = all.filter(({ topic, statement }) => new Map(groups).get(topic)?.[0] !== statement);
  const sources = [...new Set(all.map(({ statement }) => rootOf(record, statement)))];
  const ofOneSource = sources.map((source) => {
    const said = all.filter(({ statement }) => rootOf(record, statement) === source);
    return said.filter(({ topic }, index) => said.findIndex((other) => other.topic === topic) === index);
  });
  const worlds = [...oneReplaced.map((taken) => [taken]), ...ofOneSource];
  const changed = worlds.map((taken) => withTaken(record, path, form, taken));
  return distinctIn(path, form, [record, ...changed]);
}

/** Every profile that a record may be by what is said of some traits: for each of them one of its worlds. */
export function profilesIn(
  record: SpeciesRecord,
  paths: readonly TraitPath[],
  form: string | undefined,
): readonly SpeciesProfile[] {
  const records = paths.reduce<readonly SpeciesRecord[]>(
    (worlds, path) => worlds.flatMap((world) => worldsIn(world, path, form)),
    [record],
  );
  return records.map(certain);
}

/** The profile of a record in which only what is adopted is true. */
export function certain(record: SpeciesRecord): SpeciesProfile {
  return JSON.parse(JSON.stringify(resolve(record)), (key, value) => (key === "also" ? undefined : value));
}

/** The record with what is said of some traits of another said of it by one more source. */
export function withAnotherSource(
  record: SpeciesRecord,
  { of, paths }: { readonly of: SpeciesRecord; readonly paths: readonly TraitPath[] },
): SpeciesRecord {
  const by = "another-source";
  let told: SpeciesRecord = { ...record, sources: { ...record.sources, [by]: { cite: by, memory: true } } };
  for (const path of paths) {
    const said = listIn(of, path).filter(({ value, setAside }) => value !== undefined && !setAside);
    const topics = new Map(said.map((statement) => [topicOf(statement, path), statement]));
    const further = [...topics.values()].map(({ adopt: _, ...statement }) => ({ ...statement, by }));
    told = withList(told, path, [...listIn(told, path), ...further]);
  }
  return told;
}

/** The statements of each group of a trait that stand, the adopted one first; a form's in place of the species' own. */
function standingGroups(
  record: SpeciesRecord,
  path: TraitPath,
  form: string | undefined,
): ReadonlyMap<string, readonly Statement[]> {
  const own = form === undefined ? undefined : record.forms?.[form];
  const groups = new Map(grouped(record, record, path));
  for (const [topic, statements] of own ? grouped(record, own, path) : []) groups.set(topic, statements);
  return groups;
}

function grouped(record: SpeciesRecord, said: Statements, path: TraitPath) {
  const byTopic = new Map<string, Statement[]>();
  for (const statement of listIn(said, path)) {
    if (statement.value === undefined || statement.value === null || statement.setAside) continue;
    const topic = topicOf(statement, path);
    byTopic.set(topic, [...(byTopic.get(topic) ?? []), statement]);
  }
  return [...byTopic].map(([topic, statements]) => [topic, standing(record, statements)] as const);
}

/** Of a source, and of those that copy from it, only the best statement, and another for an end that it leaves open. */
function standing(record: SpeciesRecord, statements: readonly Statement[]): readonly Statement[] {
  const ranked = [...statements].sort((a, b) => (rankOf(record, a) < rankOf(record, b) ? -1 : 1));
  return ranked.filter((statement, index) => {
    const before = ranked
      .slice(0, index)
      .filter((other) => rootOf(record, other) === rootOf(record, statement));
    return (
      before.length === 0 || endsOf(statement).some((end) => !before.some((other) => states(other, end)))
    );
  });
}

const order: readonly Basis[] = ["published", "curated", "observed", "memory", "common-practice", "derived"];

function rankOf({ sources }: SpeciesRecord, statement: Statement): string {
  const { adopt, by, value, unit = "" } = statement;
  const rank = adopt ? 0 : 1 + order.indexOf(basisOf(statement, sources));
  return [rank, by, JSON.stringify(value), unit].join("|");
}

const rootOf = ({ sources }: SpeciesRecord, { by }: Statement): string =>
  sources[by]?.root ?? sources[by]?.cite ?? by;

function topicOf({ as, sex, stage, measure, value }: Statement, path: TraitPath): string {
  const count = traitTable[path].way === "rooms" ? Reflect.get(Object(value), "for") : undefined;
  return [as, sex, stage === "adult" ? undefined : stage, measure, count].join("|");
}

const informs = (topic: string) => /^(wild|tested)/.test(topic);

type End = "min" | "max";

const states = ({ value }: Statement, end: End) =>
  typeof value === "object" && typeof Reflect.get(Object(value), end) === "number";

const endsOf = (statement: Statement): readonly End[] =>
  (["min", "max"] as const).filter((end) => states(statement, end));

/** The record with these statements the only ones of their groups: the others are set aside. */
function withTaken(
  record: SpeciesRecord,
  path: TraitPath,
  form: string | undefined,
  taken: readonly Taken[],
): SpeciesRecord {
  const groups = standingGroups(record, path, form);
  const replacing = new Map(
    taken.flatMap(({ topic, statement }) => {
      const others = (groups.get(topic) ?? []).filter((other) => other !== statement);
      const completing = completingOf(path, statement, others);
      return [
        ...others.map((other): [Statement, Statement] => [other, { ...other, setAside: "another world" }]),
        ...completing,
        [statement, { ...statement, adopt: "the world" }] as [Statement, Statement],
      ];
    }),
  );
  // Those that do not stand beside what was taken would stand once it is set aside.
  const inGroup = new Set(taken.map(({ topic }) => topic));
  const changed = (statement: Statement): Statement =>
    replacing.get(statement) ??
    (inGroup.has(topicOf(statement, path)) ? { ...statement, setAside: "another world" } : statement);
  const own = form === undefined ? undefined : record.forms?.[form];
  const base = withList(record, path, listIn(record, path).map(changed));
  return own && form !== undefined
    ? { ...base, forms: { ...record.forms, [form]: withList(own, path, listIn(own, path).map(changed)) } }
    : base;
}

/** The best of the others that states an end which a span leaves open, cut to that end. */
function completingOf(
  path: TraitPath,
  statement: Statement,
  others: readonly Statement[],
): readonly [Statement, Statement][] {
  if (traitTable[path].way !== "figures") return [];
  const open = (["min", "max"] as const).find((end) => !states(statement, end));
  const other = open && others.find((each) => states(each, open) && goTogether(each, statement, open));
  if (!other) return [];
  const end = Reflect.get(Object(other.value), open) as number;
  return [[other, { ...other, adopt: undefined, value: { [open]: end } }]];
}

function goTogether(other: Statement, span: Statement, open: End): boolean {
  const ends = { ...Object(span.value), [open]: Reflect.get(Object(other.value), open) };
  const usedAlike =
    other.acclimatedAt === undefined ||
    span.acclimatedAt === undefined ||
    other.acclimatedAt === span.acclimatedAt;
  return usedAlike && ends.min <= ends.max;
}

function listIn(said: Statements, path: TraitPath): readonly Statement[] {
  const [section, name] = splitPath(path);
  return Reflect.get(Object(said[section as keyof Statements]), name) ?? [];
}

function withList<Said extends Statements>(said: Said, path: TraitPath, list: readonly Statement[]): Said {
  if (list.length === 0) return said;
  const [section, name] = splitPath(path);
  return { ...said, [section]: { ...said[section as keyof Said], [name]: list } };
}

/** Each world once: sources often agree. */
function distinctIn(path: TraitPath, form: string | undefined, records: readonly SpeciesRecord[]) {
  const valueIn = (record: SpeciesRecord) => {
    const profile = certain(onlyWith(record, [path, "size.standardShare"]));
    return JSON.stringify(
      [profile, form === undefined ? undefined : profile.forms?.[form]].map(
        (facts) => facts && factAt(facts, path),
      ),
    );
  };
  return [...new Map([...records].reverse().map((record) => [valueIn(record), record])).values()].reverse();
}

/** A record in which only some traits are spoken of: it resolves sooner. */
function onlyWith(
  { id, taxonomy, names, sources, ...said }: SpeciesRecord,
  paths: readonly TraitPath[],
): SpeciesRecord {
  const spoken = (statements: Statements) => {
    let told: Statements = {};
    for (const path of paths) told = withList(told, path, listIn(statements, path));
    return told;
  };
  const forms = Object.entries(said.forms ?? {}).map(([form, told]) => [
    form,
    { names: told.names, ...spoken(told) },
  ]);
  return { id, taxonomy, names, sources, ...spoken(said), forms: Object.fromEntries(forms) };
}
