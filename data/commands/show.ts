// Prints a profile, what it lacks, and the verdicts on it that a change of records flips.
import { profileMarkdown } from "vivary/report";
import {
  applyForm,
  factAt,
  type SpeciesProfile,
  type SpeciesRecord,
  splitPath,
  traitPaths,
  traitTable,
} from "vivary/species";
import { tellFlips } from "../flips/flips";
import { commonName, judgePairs } from "../flips/judge";
import { reasonsOf } from "../flips/reasons";
import { readCollection } from "../reading/collection";
import { baseOf } from "../reading/history";
import type { Answer } from "./answer";
import { profileAt } from "./flips";
import { isAnswer, recordNamed } from "./record-named";

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
  return { lines: [profileMarkdown(shown), ...formsOf(shown), absent(shown), "", ...flips], failed: false };
}

/** The forms that were bred of it, each with the traits in which it differs. */
function formsOf(profile: SpeciesProfile): readonly string[] {
  const forms = Object.entries(profile.forms ?? {}).map(([id, form]) => {
    const own = traitPaths
      .filter((trait) => factAt(form, trait))
      .map((trait) => `${traitTable[trait].label} (${trait})`);
    return `- ${commonName(applyForm(profile, id))} (${id}): ${own.join(", ") || "nothing that a trait holds"}`;
  });
  if (forms.length === 0) return [];
  return [
    "## Forms",
    "",
    ...forms,
    "",
    "Verdicts are of the species; a form is judged by what it has of its own.",
    "",
  ];
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
  return tellFlips(before, after, (flip) => reasonsOf(flip, [record], profiles));
}
