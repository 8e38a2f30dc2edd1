import { InvalidInputError } from "../../../errors";
import type { AdultLength } from "../../../species";
import type { AssessedParty } from "../../party";

type Lengths = readonly AdultLength[];

/** Total length in cm of the greatest animal of a party that hunts or fights. */
export function hunterLength(party: AssessedParty, lengths: Lengths): number {
  return party.length ?? Math.max(...candidates(party, lengths, "greatest").map(({ total }) => total.max));
}

/** Total length in cm that a party needs room for: the usual one of its greater sex. Young grow up. */
export function roomLength(party: AssessedParty, lengths: Lengths): number {
  const present = party.stage === undefined || party.stage === "adult" ? party.length : undefined;
  return present ?? Math.max(...candidates(party, lengths, "usual").map(({ total }) => total.max));
}

/**
 * Total length in cm of the smallest animal of a party that may be prey: the usual one of its smaller sex; undefined
 * for young of which no length is stated.
 */
export function preyLength(party: AssessedParty, lengths: Lengths): number | undefined {
  if (party.stage && party.stage !== "adult") return party.length;
  return party.length ?? Math.min(...candidates(party, lengths, "usual").map(({ total }) => total.min));
}

/** The lengths of the party's sex with the meaning wanted; each preference falls back on what there is. */
function candidates({ sex }: AssessedParty, lengths: Lengths, meaning: AdultLength["as"]): Lengths {
  if (lengths.length === 0) throw new InvalidInputError("size.adultLength", "at least one length", lengths);
  const ofSex = preferred(lengths, (length) => !sex || !length.sex || length.sex === sex);
  return preferred(ofSex, (length) => length.as === meaning);
}

function preferred(lengths: Lengths, wanted: (length: AdultLength) => boolean): Lengths {
  const found = lengths.filter(wanted);
  return found.length > 0 ? found : lengths;
}
