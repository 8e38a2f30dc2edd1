import { decimal } from "../../decimal";
import { onceOfEach, remembered } from "../../made-once";
import type { Animals } from "../../plan";
import type { AdultLength } from "../../species";
import { lengthsMeant, lengthsOfSex } from "../../species/inner";

type Lengths = readonly AdultLength[];
type Sized = Pick<Animals, "sex" | "stage" | "length">;

/** Whether animals have still to grow. */
const isYoung = ({ stage = "adult" }: Sized): boolean => stage !== "adult";

/** Whether animals are taken to be as long as grown ones: they are grown, and nobody says how long they are. */
export const isOfGrownLength = (animals: Sized): boolean => !isYoung(animals) && animals.length === undefined;

/** Whether nobody says how long animals are that have still to grow, once they are more than fry. */
export const isUnmeasured = ({ stage, length }: Sized): boolean =>
  stage === "juvenile" && length === undefined;

/**
 * Total length in cm of animals that hunt, fight or need room: the usual one of the larger sex, or the one they have if
 * they are longer. Whoever is shorter grows up.
 */
export function grownLength(animals: Sized, lengths: Lengths): number {
  return Math.max(animals.length ?? 0, usual(animals, lengths).longest);
}

/** The same of the larger sex, whichever is kept: the other is hardly less strong or broad. */
export const longestLength = ({ length }: Sized, lengths: Lengths): number =>
  grownLength(length === undefined ? {} : { length }, lengths);

/**
 * Total length in cm of the smallest animal that may be prey: the one they have, else the usual one of the smaller sex;
 * undefined for young of which no length is stated.
 */
export function preyLength(animals: Sized, lengths: Lengths): number | undefined {
  return animals.length ?? (isYoung(animals) ? undefined : grownPreyLength(animals, lengths));
}

/** Total length in cm of the smallest grown animal of a kind: the usual one of the smaller sex. */
export const grownPreyLength = (animals: Sized, lengths: Lengths): number => usual(animals, lengths).smaller;

/** Fish are grown from this share of the adult length on: that of `size.grownAt`, the age when grown. */
const grownShare = 0.9;

/** Whether animals are shorter than the smallest grown ones of their sex. */
export const isShorterThanGrown = (animals: Sized, lengths: Lengths): boolean =>
  animals.length !== undefined && animals.length < decimal(grownShare * grownPreyLength(animals, lengths));

/** Usual total lengths of animals, cm. */
interface UsualLengths {
  /** The greatest. */
  readonly longest: number;
  /** Of the smaller sex, as far as it is sure. */
  readonly smaller: number;
}

/** The usual lengths of the animals' sex; each preference falls back on what there is. */
const usual = ({ sex }: Sized, lengths: Lengths): UsualLengths => usualBySex(lengths)(sex);

const usualBySex = /* @__PURE__ */ remembered((lengths: Lengths) =>
  onceOfEach((sex: Sized["sex"]) => summedUp(lengthsMeant(lengthsOfSex(lengths, sex), "usual"))),
);

function summedUp(lengths: Lengths): UsualLengths {
  return {
    longest: Math.max(...lengths.map(({ total }) => total.max)),
    smaller: Math.min(...lengths.map(({ total }) => total.min)),
  };
}
