import type { Kin } from "../../plan";
import type { TraitValue } from "../../species";
import { leastNumber } from "./least-number";

/** What tells how many of a species are wanted; without one of them more may be wanted than is known. */
export const wantedBy = ["social.group", "social.living", "social.femalesPerMale"] as const;

type Counted = { readonly party: { readonly kin: Kin } } & {
  readonly [Path in (typeof wantedBy)[number]]?: TraitValue<Path>;
};

/**
 * The animals of a species as they will be when there are as many as belong together: what is asked of the tank is asked
 * for that number, so that meeting one condition brings no other.
 */
export function wantedKin(group: Counted): Kin {
  const { kin } = group.party;
  const living = group["social.living"];
  if (living === undefined || living === "alone") return kin;
  const least = group["social.group"];
  const { count = 1, males, females } = kin;
  const isMixed = males !== undefined && males > 0 && females !== undefined && females > 0;
  const mated = isMixed
    ? Math.max(females, Math.ceil((group["social.femalesPerMale"] ?? 0) * males))
    : females;
  const enough = least ? Math.max(count, leastNumber(least, count)) : count;
  const wanted = Math.max(enough, (males ?? 0) + (mated ?? 0));
  return { ...kin, count: wanted, ...(isMixed && { females: wanted - males }) };
}
