import type { AdultLength } from "../../../species";
import type { AssessedParty } from "../../party";

type Lengths = readonly AdultLength[] | undefined;

/** Total length in cm of the greatest animal of a party that hunts; undefined where no length is known. */
export function hunterLength(party: AssessedParty, lengths: Lengths): number | undefined {
  return longest(party, lengths, "greatest");
}

/** Total length in cm that a party needs room for: the usual one of its greater sex. */
export function roomLength(party: AssessedParty, lengths: Lengths): number | undefined {
  return longest(party, lengths, "usual");
}

/** Total length in cm of the smallest animal of a party that may be prey: the usual one of its smaller sex. */
export function preyLength(party: AssessedParty, lengths: Lengths): number | undefined {
  if (party.length !== undefined) return party.length;
  const ends = candidates(party, lengths, "usual").map(({ total }) => total.min);
  return ends.length > 0 ? Math.min(...ends) : undefined;
}

function longest(party: AssessedParty, lengths: Lengths, meaning: AdultLength["as"]): number | undefined {
  if (party.length !== undefined) return party.length;
  const ends = candidates(party, lengths, meaning).map(({ total }) => total.max);
  return ends.length > 0 ? Math.max(...ends) : undefined;
}

/** The lengths of the party's sex with the meaning wanted; each preference falls back on what there is. */
function candidates(
  { sex }: AssessedParty,
  lengths: Lengths = [],
  meaning: AdultLength["as"],
): readonly AdultLength[] {
  const ofSex = preferred(lengths, (length) => !sex || length.sex === sex);
  return preferred(ofSex, (length) => length.as === meaning);
}

function preferred<Item>(items: readonly Item[], wanted: (item: Item) => boolean): readonly Item[] {
  const found = items.filter(wanted);
  return found.length > 0 ? found : items;
}
