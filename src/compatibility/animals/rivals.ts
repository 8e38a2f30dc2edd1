import type { Kin } from "../../plan";
import type { Act, TraitValue } from "../../species";
import { claimsOf, likelyOfSex, type Territory } from "./territories";

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
 * pairs or hold a place in pairs, for a mate is no rival, and nor are the females of a harem. Where the sexes are not
 * known, half of them count as male, and at least two: two that were bought unsexed are rivals as often as a pair.
 */
export function rivalsOf({ act, kin, isPair, living, territory }: Rivalry): number {
  const { count = isPair ? 2 : 1, males, females, mayHave } = kin;
  const place = placeOf(territory);
  const likely = isPair ? count : likelyOfSex(count);
  if (living === "pair" || (place?.holder === "pair" && act.target !== "own-sex")) {
    if (onlyOneSex(kin)) return count;
    const sexed = males !== undefined || females !== undefined;
    return Math.max(sexed || isPair ? Math.ceil(count / 2) : likely, males ?? 0, females ?? 0);
  }
  const holders = place ? claimsOf(place, { ...kin, count }) : 0;
  if (act.target !== "own-sex") {
    const heads = living === "harem" && !onlyOneSex(kin) ? (males ?? likely) : count;
    return Math.max(heads, holders);
  }
  const ofSex = act.doer === "female" ? females : males;
  const may = act.doer === "female" ? mayHave.female : mayHave.male;
  return may ? Math.max(ofSex ?? likely, holders) : 0;
}

const onlyOneSex = ({ mayHave }: Kin) => mayHave.male !== mayHave.female;
