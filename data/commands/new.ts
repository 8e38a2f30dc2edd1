// Starts the record of a species, with what must be known as questions that tell what is said of a relative.
import { writeFile } from "node:fs/promises";
import { join } from "node:path";
import { jsonSchemas, problemsIn } from "vivary/schema";
import { splitPath, statementsOf, type TraitPath, traitTable } from "vivary/species";
import { question } from "../checks/nothing-is-left-to-fill-in";
import { type Collection, readCollection } from "../reading/collection";
import { filesNamed } from "../reading/find-files";
import { type Answers, answersIn } from "../reading/issue-form";
import { schemaAt, spaced } from "../reading/schema-at";
import { nearest } from "../reading/spelling";
import { formatRecord } from "../writing/format-record";
import { type Answer, refused } from "./answer";

type Relative = Collection["records"][number]["record"];

/** What a new record is asked: without these it may be out of scope, or no plan with it can be judged. */
const asked = [
  "origin.waters",
  "size.adultLength",
  "water.temperature",
  "water.pH",
  "water.generalHardness",
  "space.baseLength",
  "space.zones",
  "temperament.acts",
  "social.living",
  "social.group",
  "predation.eats",
] as const satisfies readonly TraitPath[];

/** What a record may start with beside a name. */
interface Beginnings {
  /** A relative of which the questions tell how the answers may look; one of the genus if absent. */
  readonly like?: string | undefined;
  /** What an issue says, by question. */
  readonly answers?: Answers | undefined;
}

/** Starts the record that an issue asks for. */
export async function startFrom(root: string, issue: string, like?: string): Promise<Answer> {
  const answers = answersIn(issue);
  const name = answers.get("scientific name");
  return name === undefined
    ? refused('The issue has no answer under "### Scientific name".')
    : start(root, name, { like, answers });
}

/** Starts a record. */
export async function start(root: string, name: string, beginnings: Beginnings = {}): Promise<Answer> {
  const { like, answers = new Map() } = beginnings;
  const id = name.toLowerCase().replaceAll(" ", "-");
  if (/\bsp\.|\b(L|LDA|CW)-?\d+\b|[×]/i.test(name)) return refused(outOfScope(name));
  const collection = await readCollection(root);
  const known = filesNamed(collection, name).find(({ folder }) => folder === "species");
  if (known) return refused(`${name} has a record: ${known.path}`);
  const [genus, epithet, ...further] = name.split(" ");
  const behind = further.join(" ");
  if (relativeOf(collection, name, behind))
    return refused(
      `${behind} stands behind the name. Did you mean: npm run species new ${genus} ${epithet} -- --like "${behind}"`,
    );
  const relative = relativeOf(collection, name, like);
  if (like !== undefined && relative === undefined)
    return refused(`No well-formed record is called ${like}.`);
  const record = blank(id, name, answers, relative);
  const ofName = problemsIn("species", record).filter(({ path }) =>
    ["id", "taxonomy.name"].includes(path.join(".")),
  );
  if (ofName.length > 0)
    return refused(`Expected a scientific name such as "Danio rerio", found "${name}".${capitals(name)}`);

  const path = `data/species/${id}.json`;
  await writeFile(join(root, path), formatRecord(record, jsonSchemas.species));
  const shown = relative
    ? ` The questions say how the answers look in ${relative.taxonomy.name}.`
    : guessOfGenus(collection, name);
  return {
    lines: [
      `${path} waits to be filled in.${shown}`,
      "A source that is not in data/sources: npm run species new source <id>",
      `Then: npm run format && npm run species check ${id}`,
    ],
    failed: false,
  };
}

/** The name with its capital, where nothing else is wrong with it. */
function capitals(name: string): string {
  const meant = `${name.slice(0, 1).toUpperCase()}${name.slice(1).toLowerCase()}`;
  return /^[A-Z][a-z]+( [a-z-]+)+$/.test(meant) ? ` Did you mean ${meant}?` : "";
}

/** A genus that may have been meant, where no record is of the one that was typed. */
function guessOfGenus({ records }: Collection, name: string): string {
  const [genus = ""] = name.split(" ");
  const meant = nearest(
    genus,
    records.map(({ record }) => record.taxonomy.name.split(" ")[0] ?? ""),
    genus.length < 8 ? 1 : 2,
  );
  return meant === undefined ? "" : ` It is the first ${genus} here. Did you mean ${meant}?`;
}

const outOfScope = (name: string) =>
  `${name} has no scientific name of its own, and a record needs one: unnamed animals, L and CW numbers and hybrids of the trade are out of scope.`;

/** A species to copy the shape of answers from: the one named, else one of the genus. */
function relativeOf(collection: Collection, name: string, like?: string): Relative | undefined {
  const paths = like === undefined ? [] : filesNamed(collection, like).map(({ path }) => path);
  const [genus] = name.split(" ");
  const found = collection.records.find(({ path, record }) =>
    like === undefined ? record.taxonomy.name.split(" ")[0] === genus : paths.includes(path),
  );
  return found?.record;
}

function blank(id: string, name: string, answers: Answers, relative?: Relative) {
  const { family = "", order = "", kind = "" } = relative?.taxonomy ?? {};
  return {
    $schema: "../schemas/species.schema.json",
    id,
    taxonomy: { name, authority: "", family, order, kind },
    names: { en: (answers.get("english name") ?? "").split(/, */) },
    sources: { source: { cite: "", at: answers.get("source") ?? "" } },
    ...questions(answers, relative),
  };
}

/**
 * The traits asked for, each with a note that says what to look for, and how an answer may look. No figure stands as a value
 * before somebody wrote it there: who took the questions out alone would leave a relative's.
 */
function questions(answers: Answers, relative?: Relative): Readonly<Record<string, object>> {
  const sections = new Map<string, object>();
  for (const trait of asked) {
    const [section, key] = splitPath(trait);
    const { description } = schemaAt("species", [section, key]) ?? {};
    const told = answers.get(traitTable[trait].label.toLowerCase());
    const said = told === undefined ? "" : ` The issue says: ${told}`;
    const { value, ...shape } = exampleFor(trait, relative);
    const answer = ` ${relative ? `In ${relative.taxonomy.name}` : "Such as"}: ${plain(value)}.`;
    const line = { ...shape, by: "source", note: `${question} ${description}${answer}${said}` };
    sections.set(section, { ...sections.get(section), [key]: [line] });
  }
  return Object.fromEntries(sections);
}

/** A value in a sentence. */
const plain = (value: unknown) => spaced(value).replaceAll('"', "");

/** What stands in a statement whoever says it. */
const shape = ["value", "as", "measure"];

/** A statement of the relative on how the animal is kept, or one that the schema supposes. */
function exampleFor(trait: TraitPath, relative?: Relative): { readonly value?: unknown } {
  const supposed = schemaAt("species", [...splitPath(trait), 0])?.examples?.[0] ?? {};
  const said = relative ? statementsOf(relative, trait) : [];
  const stated = said.find(
    ({ value, unit, as, setAside }) =>
      value !== undefined && !unit && !setAside && (as === undefined || as === "kept" || as === "usual"),
  );
  return Object.fromEntries(Object.entries(stated ?? supposed).filter(([key]) => shape.includes(key)));
}
