import type { Animals } from "../../plan";
import type { AdultLength } from "../../species";
import { lengthsMeant, lengthsOfSex } from "../../species/inner";

type Lengths = readonly AdultLength[];
type Sized = Pick<Animals, "sex" | "stage" | "length">;

/** Whether animals have still to grow. */
export const isYoung = ({ stage = "adult" }: Sized): boolean => stage !== "adult";

/** Animals as they will be when grown: without the length they have now. */
export function grown({ stage: _, length: __, ...animals }: Animals): Animals {
  return animals;
}

/** Total length in cm of the greatest animal that hunts or fights. */
export function hunterLength(animals: Sized, lengths: Lengths): number {
  return animals.length ?? longest(candidates(animals, lengths, "greatest"));
}

/** Total length in cm that animals need room for: the usual one of the greater sex. Young grow up. */
export function roomLength(animals: Sized, lengths: Lengths): number {
  const present = isYoung(animals) ? undefined : animals.length;
  return present ?? longest(candidates(animals, lengths, "usual"));
}

/**
 * Total length in cm of the smallest animal that may be prey: the usual one of the smaller sex; undefined for young of
 * which no length is stated.
 */
export function preyLength(animals: Sized, lengths: Lengths): number | undefined {
  if (isYoung(animals)) return animals.length;
  return animals.length ?? shortest(candidates(animals, lengths, "usual"));
}

/** The lengths of the animals' sex with the meaning wanted; each preference falls back on what there is. */
function candidates({ sex }: Sized, lengths: Lengths, meaning: AdultLength["as"]): Lengths {
  return lengthsMeant(lengthsOfSex(lengths, sex), meaning);
}

const longest = (lengths: Lengths) => Math.max(...lengths.map(({ total }) => total.max));
const shortest = (lengths: Lengths) => Math.min(...lengths.map(({ total }) => total.min));
