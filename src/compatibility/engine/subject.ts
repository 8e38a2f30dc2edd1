import type { Animals } from "../../plan";
import type { CheckedParty } from "../../plan/inner";
import { type Basis, factAt, type TraitPath, type TraitValue } from "../../species";
import { standingValues } from "../../species/inner";

/** A party as the engine reads it. */
export interface Subject {
  readonly party: CheckedParty;
  readonly animals: Animals;
  /** Its place among the verdict's parties. */
  readonly index: number;
  /** The values of a trait that a source supports, the adopted one first; none where it is unknown. */
  readonly standing: <Path extends TraitPath>(path: Path) => readonly TraitValue<Path>[];
  /** How well the adopted value is supported; undefined where the trait is unknown. */
  readonly basis: (path: TraitPath) => Basis | undefined;
}

/** A party with its traits, each looked up once. */
export function subjectOf(party: CheckedParty, index: number): Subject {
  const known = new Map<TraitPath, readonly unknown[]>();
  const standing = (path: TraitPath): readonly unknown[] => {
    const held = known.get(path);
    if (held) return held;
    const fact = factAt(party.species, path);
    const values = fact ? standingValues(path, fact) : [];
    known.set(path, values);
    return values;
  };
  return {
    party,
    animals: party.animals,
    index,
    standing: standing as Subject["standing"],
    basis: (path) => factAt(party.species, path)?.basis,
  };
}

/** Whether anything is known of a trait. */
export const knows = ({ standing }: Subject, path: TraitPath) => standing(path).length > 0;
