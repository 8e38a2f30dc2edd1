import { type AdultLength, lengthsMeant, lengthsOfSex } from "../../../species";
import type { AssessedParty } from "../../party";

type Lengths = readonly AdultLength[];

/** Whether a party has still to grow. */
export const isYoung = ({ stage = "adult" }: AssessedParty): boolean => stage !== "adult";

/** A party as it will be when grown: without the length it has now. */
export function grown({ stage: _, length: __, ...party }: AssessedParty): AssessedParty {
  return party;
}

/** Total length in cm of the greatest animal of a party that hunts or fights. */
export function hunterLength(party: AssessedParty, lengths: Lengths): number {
  return party.length ?? Math.max(...candidates(party, lengths, "greatest").map(({ total }) => total.max));
}

/** Total length in cm that a party needs room for: the usual one of its greater sex. Young grow up. */
export function roomLength(party: AssessedParty, lengths: Lengths): number {
  const present = isYoung(party) ? undefined : party.length;
  return present ?? Math.max(...candidates(party, lengths, "usual").map(({ total }) => total.max));
}

/**
 * Total length in cm of the smallest animal of a party that may be prey: the usual one of its smaller sex; undefined
 * for young of which no length is stated.
 */
export function preyLength(party: AssessedParty, lengths: Lengths): number | undefined {
  if (isYoung(party)) return party.length;
  return party.length ?? Math.min(...candidates(party, lengths, "usual").map(({ total }) => total.min));
}

/** The lengths of the party's sex with the meaning wanted; each preference falls back on what there is. */
function candidates({ sex }: AssessedParty, lengths: Lengths, meaning: AdultLength["as"]): Lengths {
  return lengthsMeant(lengthsOfSex(lengths, sex), meaning);
}
