// Prints a profile, what it lacks, and the verdicts on it that a change of records flips.
import { assessPair } from "vivary/compatibility";
import { profileMarkdown, sentence } from "vivary/report";
import {
  type SpeciesProfile,
  type SpeciesRecord,
  splitPath,
  statementsOf,
  type TraitPath,
  traitPaths,
  traitTable,
} from "vivary/species";
import { readCollection } from "../collection";
import { type Flip, flipLine, flipsOf, tellFlips } from "../flips";
import { baseOf } from "../history";
import { judgePairs } from "../judge";
import { spaced } from "../schema-at";
import type { Answer } from "./answer";
import { profileAt } from "./flips";
import { isAnswer, recordNamed } from "./record-named";

/** How many flips are told with their reasons. */
const explained = 12;

export async function show(root: string, asked: string): Promise<Answer> {
  const collection = await readCollection(root);
  const record = recordNamed(collection, asked);
  if (isAnswer(record)) return record;
  const profiles = collection.records.map(({ profile }) => profile);
  const shown = profiles.find(({ id }) => id === record.id);
  if (!shown) return { lines: [], failed: true };
  const base = await baseOf(root);
  const flips =
    base === undefined
      ? ["No commit is at hand to compare with."]
      : tellReasons(record, profiles, await profileAt(root, base, `data/species/${record.id}.json`));
  return { lines: [profileMarkdown(shown), absent(shown), "", ...flips], failed: false };
}

/** The traits that nobody states, nor follow from others. */
function absent(profile: SpeciesProfile): string {
  const unknown = traitPaths.filter((trait) => {
    const [section, name] = splitPath(trait);
    const traits: object | undefined = profile[section];
    return traits === undefined || !Object.hasOwn(traits, name);
  });
  const labels = unknown.map((trait) => `${traitTable[trait].label} (${trait})`);
  return labels.length === 0 ? "Every trait is known." : `Not known yet: ${labels.join(", ")}.`;
}

/** What the change of a record does to its pairs, and why, the gravest first. */
function tellReasons(
  record: SpeciesRecord,
  profiles: readonly SpeciesProfile[],
  past: readonly SpeciesProfile[],
): readonly string[] {
  const { id } = record;
  const takesPart = (one: string) => one === id;
  const before = judgePairs([...profiles.filter((profile) => profile.id !== id), ...past], takesPart);
  const after = judgePairs(profiles, takesPart);
  const flips = flipsOf(before, after);
  const [counts] = [tellFlips(before, after).slice(flips.length)];
  const told = flips
    .slice(0, explained)
    .flatMap((flip) => [flipLine(flip), ...reasonsOf(flip, record, profiles)]);
  const more = flips.slice(explained).map(flipLine);
  return [...told, ...more, ...counts];
}

/** The findings that came with a flip, each with its figures and with the statements that it rests on. */
function reasonsOf(
  { pair, before, after }: Flip,
  record: SpeciesRecord,
  profiles: readonly SpeciesProfile[],
): readonly string[] {
  const [one, other] = pair.split(" ").map((id) => profiles.find((profile) => profile.id === id));
  if (!one || !other) return [];
  const verdict = assessPair({ species: one }, { species: other });
  const came = verdict.findings.filter(({ weight, rule }) => {
    const named = `${weight} ${rule}`;
    return after.against.includes(named) && !before.against.includes(named);
  });
  const lines = came.flatMap((finding) => [
    `  ${finding.rule}: ${sentence(verdict, finding)}`,
    ...finding.traits.flatMap((trait) => statementsBehind(record, trait)),
  ]);
  return [...new Set(lines)];
}

/** The lines of a record that a trait rests on. */
const statementsBehind = (record: SpeciesRecord, trait: TraitPath): readonly string[] =>
  statementsOf(record, trait)
    .filter(({ value, setAside }) => value !== undefined && !setAside)
    .map(({ note, adopt, ...said }) => `    ${trait}: ${spaced(said)}`);
