import type { Animals } from "../../plan";
import type { CheckedParty } from "../../plan/inner";
import { type Basis, factAt, type TraitPath, type TraitValue } from "../../species";
import { standingValues } from "../../species/inner";
import { hangsOnTemper, ofTemper, spread } from "./temper";

/** A party as the engine reads it. */
export interface Subject {
  readonly party: CheckedParty;
  readonly animals: Animals;
  /** Its place among the verdict's parties. */
  readonly index: number;
  /**
   * The values of a trait that a source supports, the adopted one first, then those that individuals may have; none where
   * it is unknown.
   */
  readonly standing: <Path extends TraitPath>(path: Path) => readonly TraitValue<Path>[];
  /** How well the adopted value is supported; undefined where the trait is unknown. */
  readonly basis: (path: TraitPath) => Basis | undefined;
  /** Whether individuals differ in a trait, and the plan does not say what these are like. */
  readonly varies: (path: TraitPath) => boolean;
}

/** A party with its traits, each looked up once. */
export function subjectOf(party: CheckedParty, index: number): Subject {
  const { animals, species } = party;
  const known = new Map<TraitPath, readonly unknown[]>();
  const varies = (path: TraitPath): boolean =>
    animals.temper === undefined &&
    hangsOnTemper(path) &&
    factAt(species, "temperament.varies")?.value === true;
  const standing = (path: TraitPath): readonly unknown[] => {
    const held = known.get(path);
    if (held) return held;
    const fact = factAt(species, path);
    const stated = fact ? standingValues(path, fact) : [];
    const values = animals.temper
      ? stated.map((value) => ofTemper(animals.temper ?? "bolder", path, value))
      : withIndividuals(path, stated, varies(path));
    known.set(path, values);
    return values;
  };
  return {
    party,
    animals,
    index,
    standing: standing as Subject["standing"],
    basis: (path) => factAt(species, path)?.basis,
    varies,
  };
}

/** The values that sources support, and beside them those of individuals that differ from them. */
function withIndividuals(path: TraitPath, stated: readonly unknown[], varies: boolean): readonly unknown[] {
  if (!varies) return stated;
  const told = new Set(stated.map((value) => JSON.stringify(value)));
  const others = stated
    .flatMap((value) => spread.map((temper) => ofTemper(temper, path, value)))
    .filter((value) => !told.has(JSON.stringify(value)) && told.add(JSON.stringify(value)));
  return [...stated, ...others];
}

/** Whether anything is known of a trait. */
export const knows = ({ standing }: Subject, path: TraitPath) => standing(path).length > 0;
