import type { Kin } from "../../plan";
import type { TraitValue } from "../../species";
import { leastNumber } from "./least-number";

/** What tells how many of a species are wanted. */
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
  const { "social.group": least, "social.living": living, "social.femalesPerMale": ratio = 0 } = group;
  const { count = 1, males, females } = kin;
  if (!least || living === "alone") return kin;
  const enough = Math.max(count, leastNumber(least, count));
  const mated = males && females ? Math.max(females, Math.ceil(ratio * males)) : females;
  const wanted = Math.max(enough, (males ?? 0) + (mated ?? 0));
  return { ...kin, count: wanted, ...(mated !== undefined && { females: mated }) };
}
