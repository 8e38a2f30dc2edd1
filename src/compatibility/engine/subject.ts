import type { Animals } from "../../plan";
import type { CheckedParty } from "../../plan/inner";
import { type Basis, factAt, type TraitPath, type TraitValue } from "../../species";
import { standingValues } from "../../species/inner";
import { hangsOnTemper, ofTemper, spread } from "./temper";

/** A value that a trait may have. */
export interface Possible {
  readonly value: unknown;
  /** Which of the values that sources support it is, or comes of: the adopted one is the first, 0. */
  readonly from: number;
}

/** A party as the engine reads it. */
export interface Subject {
  readonly party: CheckedParty;
  readonly animals: Animals;
  /** Its place among the verdict's parties. */
  readonly index: number;
  /** What a trait may be, the adopted value first; nothing where it is unknown. */
  readonly possible: (path: TraitPath) => readonly Possible[];
  /** The values that a trait may have, the adopted one first; none where it is unknown. */
  readonly standing: <Path extends TraitPath>(path: Path) => readonly TraitValue<Path>[];
  /** How well the adopted value is supported; undefined where the trait is unknown. */
  readonly basis: (path: TraitPath) => Basis | undefined;
  /** Whether individuals differ in a trait, and the plan does not say what these are like. */
  readonly varies: (path: TraitPath) => boolean;
}

/** A party with its traits, each looked up once. */
export function subjectOf(party: CheckedParty, index: number): Subject {
  const { animals, species } = party;
  const varies = (path: TraitPath): boolean =>
    animals.temper === undefined &&
    hangsOnTemper(path) &&
    factAt(species, path) !== undefined &&
    factAt(species, "temperament.varies")?.value !== false;
  const possible = once((path) => {
    const fact = factAt(species, path);
    const stated = fact ? standingValues(path, fact) : [];
    const { temper } = animals;
    if (temper) return numbered(stated.map((values) => values.map((value) => ofTemper(temper, path, value))));
    return numbered(varies(path) ? stated.map((values) => withIndividuals(path, values)) : stated);
  });
  const standing = once((path) => possible(path).map(({ value }) => value));
  return {
    party,
    animals,
    index,
    possible,
    standing: standing as Subject["standing"],
    basis: (path) => factAt(species, path)?.basis,
    varies,
  };
}

/** What is found of a trait, looked up once. */
function once<Found>(find: (path: TraitPath) => Found): (path: TraitPath) => Found {
  const known = new Map<TraitPath, Found>();
  return (path) => {
    const held = known.get(path);
    if (held !== undefined) return held;
    const found = find(path);
    known.set(path, found);
    return found;
  };
}

const numbered = (stated: readonly (readonly unknown[])[]): readonly Possible[] =>
  stated.flatMap((values, from) => distinct(values).map((value) => ({ value, from })));

/** The values that a source supports, and beside them those of individuals that differ from them. */
const withIndividuals = (path: TraitPath, values: readonly unknown[]): readonly unknown[] => [
  ...values,
  ...values.flatMap((value) => spread.map((temper) => ofTemper(temper, path, value))),
];

function distinct(values: readonly unknown[]): readonly unknown[] {
  if (values.length < 2) return values;
  const told = new Set<string>();
  return values.filter((value) => {
    const key = JSON.stringify(value);
    return !told.has(key) && told.add(key);
  });
}

/** Whether anything is known of a trait. */
export const knows = ({ possible }: Subject, path: TraitPath) => possible(path).length > 0;

/** Whether two parties are of one species, of which one thing is true: what a source says of a trait, it says of both. */
export function shareFact(one: Subject, other: Subject, path: TraitPath): boolean {
  if (one.animals.id !== other.animals.id) return false;
  const [fact, same] = [factAt(one.party.species, path), factAt(other.party.species, path)];
  return fact === same || JSON.stringify(fact) === JSON.stringify(same);
}
