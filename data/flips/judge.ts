// What the library answers of every pair of species.
import { assessPair, type Finding, type Outcome, type Verdict } from "vivary/compatibility";
import type { SpeciesProfile } from "vivary/species";

/** A verdict without its figures. */
export interface Judgement {
  readonly name: string;
  readonly outcome: Outcome;
  readonly atBest: Outcome;
  readonly atWorst: Outcome;
  /** What speaks against it: `blocking predation`. */
  readonly against: readonly string[];
}

/** Judgements by the ids of the two species. */
export type Judgements = ReadonlyMap<string, Judgement>;

/** Judges every pair, or those in which one of the species named takes part. */
export function judgePairs(
  profiles: readonly SpeciesProfile[],
  takesPart: (id: string) => boolean = () => true,
): Judgements {
  const judged = new Map<string, Judgement>();
  const inOrder = [...profiles].sort((a, b) => (a.id < b.id ? -1 : 1));
  for (const [index, a] of inOrder.entries()) {
    for (const b of inOrder.slice(index)) {
      if (!takesPart(a.id) && !takesPart(b.id)) continue;
      const verdict = assessPair({ species: a }, { species: b });
      judged.set(`${a.id} ${b.id}`, judgementOf(pairName(a, b), verdict));
    }
  }
  return judged;
}

export function judgementOf(name: string, { outcome, bounds, findings }: Verdict): Judgement {
  const rulesOf = (weight: Finding["weight"]) =>
    findings.filter((finding) => finding.weight === weight).map(({ rule }) => `${weight} ${rule}`);
  const against = [...new Set([...rulesOf("blocking"), ...rulesOf("restricting")])];
  return { name, outcome, ...bounds, against };
}

/** A judgement in one line: `guppy and platy: conditional; restricting interbreeding`. */
export const lineOf = (judgement: Judgement): string =>
  [`${judgement.name}: ${answerOf(judgement)}`, judgement.against.join(", ")].filter(Boolean).join("; ");

/** The outcome, and its bounds where they say more. */
export function answerOf({ outcome, atBest, atWorst }: Omit<Judgement, "name" | "against">): string {
  return atBest === outcome && atWorst === outcome ? outcome : `${outcome} (${atBest} to ${atWorst})`;
}

/** How a pair is named: by the common names. */
export const pairName = (a: SpeciesProfile, b: SpeciesProfile): string =>
  `${commonName(a)} and ${a.id === b.id ? "its own kind" : commonName(b)}`;

export const commonName = ({ names, taxonomy }: SpeciesProfile): string => names.en?.[0] ?? taxonomy.name;
