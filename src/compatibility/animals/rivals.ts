import type { Kin } from "../../plan";
import type { Act, TraitValue } from "../../species";
import { claimsOf, numberOfSex, type Territory } from "./territories";

/** What says how many rivals there are. */
interface Rivalry {
  readonly act: Act;
  readonly kin: Kin;
  /** Whether the rivals are two parties, of which nothing says that there are more animals. */
  readonly isPair: boolean;
  readonly living: TraitValue<"social.living"> | undefined;
  readonly territory: TraitValue<"space.territory"> | undefined;
}

/** A place that is defended, if any is. */
export const placeOf = (territory: Rivalry["territory"]): Territory | undefined =>
  territory === "none" ? undefined : territory;

/**
 * How many of a kind need a place of their own, out of each other's sight: each male, or each pair where they live in
 * pairs or hold a place in pairs, for a mate is no rival, and nor are the females of a harem. Of those whose sex
 * nobody knows half count as male, and at least two: two that were bought unsexed are rivals as often as a pair.
 */
export function rivalsOf({ act, kin, isPair, living, territory }: Rivalry): number {
  const { count = leastOf(kin, isPair ? 2 : 1), males, females, some, mayHave } = kin;
  const place = placeOf(territory);
  const counted = { ...kin, count };
  if (living === "pair" || (place?.holder === "pair" && act.target !== "own-sex")) {
    if (onlyOneSex(kin)) return count;
    const isUnsexed = (males ?? females ?? some) === undefined;
    const pairs = Math.ceil(count / 2);
    return isPair && isUnsexed
      ? pairs
      : Math.max(pairs, numberOfSex("male", counted), numberOfSex("female", counted));
  }
  const holders = place ? claimsOf(place, counted) : 0;
  if (act.target !== "own-sex") {
    const heads = living === "harem" && !onlyOneSex(kin) ? numberOfSex("male", counted) : count;
    return Math.max(heads, holders);
  }
  const sex = act.doer ?? "male";
  return mayHave[sex] ? Math.max(numberOfSex(sex, counted), holders) : 0;
}

/** How many there are at least where nobody says it of all: those of which the sex is stated, and one besides. */
const leastOf = ({ some }: Kin, least: number): number =>
  some ? Math.max(least, (some.male ?? 0) + (some.female ?? 0) + 1) : least;

const onlyOneSex = ({ mayHave }: Kin) => mayHave.male !== mayHave.female;
