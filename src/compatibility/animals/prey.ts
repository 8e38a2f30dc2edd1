import type { Kind, TraitValue } from "../../species";

type Eaten = TraitValue<"predation.eats">[number];
type PreyClass = Eaten["prey"];

/** What the grown animals and the young of a kind count as among prey, the nearest kin that a record may name beside it. */
interface PreyKind {
  readonly grown: readonly PreyClass[];
  readonly young: readonly PreyClass[];
}

/**
 * The prey classes of each kind. Who takes shrimps takes crayfish and crabs of that length, and who takes a fish takes a
 * frog: what no record names is judged as its nearest kin.
 */
export const preyKinds: Readonly<Record<Kind, PreyKind>> = {
  fish: { grown: ["fish"], young: ["fry", "fish"] },
  shrimp: { grown: ["shrimp"], young: ["shrimplet", "shrimp"] },
  crayfish: { grown: ["crayfish", "shrimp"], young: ["young-crayfish", "shrimplet", "crayfish", "shrimp"] },
  crab: { grown: ["crab", "shrimp"], young: ["young-crab", "shrimplet", "crab", "shrimp"] },
  snail: { grown: ["snail"], young: ["young-snail", "snail"] },
  mussel: { grown: ["mussel"], young: ["mussel"] },
  frog: { grown: ["frog", "fish"], young: ["tadpole", "fry", "frog", "fish"] },
};

/** What is stated of a hunter's appetite for some classes of prey; undefined where it takes none of them. */
export interface Appetite {
  /** The class that is named. */
  readonly of: PreyClass;
  /** The greatest length that a source states, in cm. */
  readonly greatest: number | undefined;
}

/**
 * The hunter's appetite for the first of some classes that its record names; of several lengths that sources state, the
 * greatest.
 */
export function appetiteFor(eats: readonly Eaten[], classes: readonly PreyClass[]): Appetite | undefined {
  for (const of of classes) {
    let isNamed = false;
    let most: number | undefined;
    for (const { prey, greatest } of eats) {
      if (prey !== of) continue;
      isNamed = true;
      if (greatest !== undefined) most = Math.max(greatest, most ?? greatest);
    }
    if (isNamed) return { of, greatest: most };
  }
  return undefined;
}
