// Lists the gaps whose closing would settle most verdicts on pairs.
import { assessPair, type Verdict } from "vivary/compatibility";
import { type SpeciesProfile, type TraitPath, traitTable } from "vivary/species";
import { commonName } from "../flips/judge";
import { readCollection } from "../reading/collection";
import type { Answer } from "./answer";
import { isAnswer, recordNamed } from "./record-named";

const listed = 25;

interface Gap {
  readonly profile: SpeciesProfile;
  readonly trait: TraitPath;
  /** How many pairs wait for it. */
  open: number;
  /** How many of them have no outcome without it. */
  undetermined: number;
}

/** The gaps of all species, or those of one by any of its names. */
export async function wanted(root: string, asked?: string): Promise<Answer> {
  const collection = await readCollection(root);
  const record = asked === undefined ? undefined : recordNamed(collection, asked);
  if (record && isAnswer(record)) return record;
  const profiles = collection.records.map(({ profile }) => profile);
  const gaps = new Map<string, Gap>();
  for (const [index, a] of profiles.entries()) {
    for (const b of profiles.slice(index)) {
      if (record && a.id !== record.id && b.id !== record.id) continue;
      count(gaps, [a, b], assessPair({ species: a }, { species: b }));
    }
  }
  const ranked = [...gaps.values()]
    .filter(({ profile }) => !record || profile.id === record.id)
    .sort((x, y) => y.undetermined - x.undetermined || y.open - x.open);
  if (ranked.length === 0) return { lines: ["No verdict on a pair waits for a trait."], failed: false };
  const more = ranked.length > listed ? [`… and ${ranked.length - listed} gaps more.`] : [];
  return { lines: [...ranked.slice(0, listed).map(lineOf), ...more], failed: false };
}

const lineOf = ({ profile, trait, undetermined, open }: Gap) =>
  `${profile.id} (${commonName(profile)}): ${traitTable[trait].label} (${trait}) leaves ${open} pairs open, ${undetermined} of them undetermined`;

/** Counts each gap of a verdict once. */
function count(gaps: Map<string, Gap>, pair: readonly SpeciesProfile[], { outcome, open }: Verdict): void {
  const missing = open.flatMap((question) => {
    const profile = question.of === undefined ? undefined : pair[question.of];
    if (question.reason !== "missing" || !question.trait || !profile) return [];
    return [[`${profile.id} ${question.trait}`, { profile, trait: question.trait }] as const];
  });
  for (const [key, gap] of new Map(missing)) {
    const known = gaps.get(key) ?? { ...gap, undetermined: 0, open: 0 };
    known.open += 1;
    if (outcome === "undetermined") known.undetermined += 1;
    gaps.set(key, known);
  }
}
