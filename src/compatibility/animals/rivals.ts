import type { Kin } from "../../plan";
import type { Act, Sex, TraitValue } from "../../species";
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
 * How many of a kind need a place of their own, out of each other's sight: of rivals of one sex each of that sex, of others
 * each pair where they live in pairs or hold a place in pairs, for a mate is no rival, and nor are the females of a harem.
 * Of those whose sex nobody knows half count as male, and at least two: two that were bought unsexed are rivals as often as
 * a pair.
 */
export function rivalsOf({ act, kin, isPair, living, territory }: Rivalry): number {
  const { count = leastOf(kin, isPair ? 2 : 1), males, females, some, mayHave } = kin;
  const place = placeOf(territory);
  const counted = { ...kin, count };
  const numberOf = (sex: Sex) => (mayHave[sex] ? numberOfSex(sex, counted) : 0);
  if (living === "pair" || (place?.holder === "pair" && act.target !== "own-sex")) {
    if (onlyOneSex(kin)) return count;
    const pairs = Math.ceil(count / 2);
    const isUnsexed = (males ?? females ?? some) === undefined;
    if (isPair && isUnsexed) return pairs;
    if (act.target !== "own-sex") return Math.max(pairs, numberOf("male"), numberOf("female"));
  }
  const holders = place ? claimsOf(place, counted) : 0;
  if (act.target !== "own-sex") {
    const heads = living === "harem" && !onlyOneSex(kin) ? numberOf("male") : count;
    return Math.max(heads, holders);
  }
  const doers = act.doer ? numberOf(act.doer) : Math.max(numberOf("male"), numberOf("female"));
  return doers > 0 ? Math.max(doers, holders) : 0;
}

/** How many there are at least where nobody says it of all: those of which the sex is stated, and one besides. */
const leastOf = ({ some }: Kin, least: number): number =>
  some ? Math.max(least, (some.male ?? 0) + (some.female ?? 0) + 1) : least;

const onlyOneSex = ({ mayHave }: Kin) => mayHave.male !== mayHave.female;
