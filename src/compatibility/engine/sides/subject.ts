import { distinct } from "../../../distinct";
import { frozen, ownCopy } from "../../../frozen";
import { onceOfEach } from "../../../made-once";
import type { Animals } from "../../../plan";
import { type CheckedParty, isSameParty, isUnchangeable } from "../../../plan/inner";
import {
  type Basis,
  type Fact,
  factAt,
  type SpeciesProfile,
  type TraitPath,
  type TraitValue,
} from "../../../species";
import { standingValues } from "../../../species/inner";
import { hangsOnTemper, ofTemper, spread } from "./temper";

/** A value that a trait may have. */
export interface Possible {
  readonly value: unknown;
  /** Which of the values that sources support it is, or comes of: the adopted one is the first, 0. */
  readonly from: number;
}

/** What is known of a trait. */
interface KnownTrait {
  readonly fact: Fact<unknown> | undefined;
  /** What it may be, the adopted value first; nothing where it is unknown. */
  readonly possible: readonly Possible[];
  /** The values that it may have, each once, of which nobody can change any. */
  readonly values: readonly unknown[];
  /** Whether individuals differ in it, and the plan does not say what these are like. */
  readonly varies: boolean;
}

/** A trait of a party. */
export interface Reading extends KnownTrait {
  readonly subject: Subject;
  readonly trait: TraitPath;
}

/** A party as the engine reads it. */
export interface Subject {
  readonly party: CheckedParty;
  /** The party's animals, held by this subject alone: rules tell by that whether two are one group. */
  readonly animals: Animals;
  /** Its place among the verdict's parties. */
  readonly index: number;
  /** What is known of a trait: of each trait there is one reading. */
  readonly reading: (path: TraitPath) => Reading;
  /** The values that a trait may have, the adopted one first; none where it is unknown. */
  readonly standing: <Path extends TraitPath>(path: Path) => readonly TraitValue<Path>[];
}

/** The last subject of each species in each place. */
const lastSeen = /* @__PURE__ */ new WeakMap<SpeciesProfile, Subject[]>();

/**
 * A party with its traits, each looked up once; the same subject again for the same party in the same place, if no other of
 * its species was seen there meanwhile and nobody can change the profile.
 */
export function subjectOf(party: CheckedParty, index: number): Subject {
  const { species } = party;
  if (!isUnchangeable(species)) return asSubject(party, index);
  const seen = lastSeen.get(species) ?? [];
  lastSeen.set(species, seen);
  const known = seen[index];
  if (known && isSameParty(known.party, party)) return known;
  const subject = asSubject(party, index);
  seen[index] = subject;
  return subject;
}

function asSubject(party: CheckedParty, index: number): Subject {
  const { species } = party;
  const animals = { ...party.animals };
  const known = knownTraits(species, animals.temper);
  const reading = onceOfEach((trait: TraitPath): Reading => {
    const { fact, possible, values, varies } = known(trait);
    return { subject, trait, fact, possible, values, varies };
  });
  const standing = (path: TraitPath) => reading(path).possible.map(({ value }) => value);
  const subject: Subject = {
    party,
    animals,
    index,
    reading,
    standing: standing as Subject["standing"],
  };
  return subject;
}

/** Whether nobody knows a trait. */
export const isMissing = ({ possible }: Reading): boolean => possible.length === 0;

/** Whether all of some traits are known of a party. */
export const isKnownBy = ({ reading }: Subject, traits: readonly TraitPath[]): boolean =>
  !traits.map(reading).some(isMissing);

/** How well the adopted value is supported; undefined where the trait is unknown. */
export const basisOf = ({ fact }: Reading): Basis | undefined => fact?.basis;

/** Whether two parties are of one species, of which one thing is true: what a source says of a trait, it says of both. */
export const shareFact = (one: Reading, other: Reading): boolean =>
  one.subject.animals.id === other.subject.animals.id &&
  (one.fact === other.fact || JSON.stringify(one.fact) === JSON.stringify(other.fact));

type TemperOf = Animals["temper"];
type Known = (path: TraitPath) => KnownTrait;

const remembered = /* @__PURE__ */ new WeakMap<SpeciesProfile, Map<TemperOf, Known>>();

/** What is known of the traits of a species, looked up once for each profile that nobody can change. */
function knownTraits(species: SpeciesProfile, temper: TemperOf): Known {
  const look: Known = (path) => knownTrait(species, temper, path);
  if (!isUnchangeable(species)) return (path) => withOwnValues(look(path));
  const byTemper = remembered.get(species) ?? new Map<TemperOf, Known>();
  remembered.set(species, byTemper);
  const known = byTemper.get(temper) ?? onceOfEach((path) => frozen(look(path)));
  byTemper.set(temper, known);
  return known;
}

/** Several values are told by a verdict: as copies, so that nobody changes the profile by them. */
const withOwnValues = (known: KnownTrait): KnownTrait =>
  known.values.length < 2 ? known : { ...known, values: ownCopy(known.values) };

function knownTrait(species: SpeciesProfile, temper: TemperOf, path: TraitPath): KnownTrait {
  const fact: Fact<unknown> | undefined = factAt(species, path);
  const varies =
    temper === undefined &&
    hangsOnTemper(path) &&
    fact !== undefined &&
    factAt(species, "temperament.varies")?.value !== false;
  const stated = fact ? standingValues(path, fact) : [];
  const as = (one: NonNullable<TemperOf>) => (value: unknown) =>
    ofTemper(one, path, value, species.taxonomy.kind);
  const ofIndividuals = (values: readonly unknown[]): readonly unknown[] => {
    if (temper) return values.map(as(temper));
    return varies ? [...values, ...values.flatMap((value) => spread.map((one) => as(one)(value)))] : values;
  };
  const possible = numbered(stated.map(ofIndividuals));
  return { fact, varies, possible, values: distinct(possible.map(({ value }) => value)) };
}

const numbered = (stated: readonly (readonly unknown[])[]): readonly Possible[] =>
  stated.flatMap((values, from) => distinct(values).map((value) => ({ value, from })));
