import type { Animals, Kin } from "../../plan";
import type { TraitPath, TraitValue } from "../../species";
import { areSexed } from "./females-per-male";
import { leastNumber } from "./least-number";

/** What tells how many of a species are wanted; without one of them more may be wanted than is known. */
export const wantedBy = ["social.group", "social.living", "social.femalesPerMale"] as const;

export type WantedBy = (typeof wantedBy)[number];

/** These traits, with what tells how many are wanted; a call, so that bundlers can leave out whoever lists them. */
export const besideWanted = <const Traits extends readonly TraitPath[]>(
  ...traits: Traits
): readonly [...Traits, ...typeof wantedBy] => [...traits, ...wantedBy];

type Counted = { readonly party: { readonly kin: Kin } } & {
  readonly [Path in WantedBy]?: TraitValue<Path>;
};

/**
 * The animals of a species as they will be when there are as many as belong together: what is asked of the tank is asked
 * for that number, so that meeting one condition brings no other. Where the sexes are known, those that are added are
 * females, since males may be rivals, and as many of them as no male wears out; where only some are known, so many are
 * added as are too few were all others female.
 */
export function wantedKin(group: Counted): Kin {
  const { kin } = group.party;
  const living = group["social.living"];
  if (living === undefined || living === "alone") return kin;
  const least = group["social.group"];
  const { count = 1, some } = kin;
  const males = kin.males ?? some?.male ?? 0;
  const enough = least ? Math.max(count, leastNumber(least, count)) : count;
  const isMixed = males > 0 && (kin.mayHave.female || enough > count);
  const mates = isMixed ? Math.ceil((group["social.femalesPerMale"] ?? 0) * males) : 0;
  const wanted = Math.max(enough, males + mates);
  if (!areSexed(kin)) {
    const joined = wanted - enough;
    if (joined === 0) return { ...kin, count: wanted };
    return { ...kin, count: wanted, some: { ...some, female: (some?.female ?? 0) + joined } };
  }
  const mayHave = { ...kin.mayHave, female: wanted > males };
  return { ...kin, count: wanted, females: wanted - males, mayHave };
}

/** Whether more may be wanted than are counted: what tells how many is not known. */
export const mayWantMore = (group: Counted): boolean =>
  group.party.kin.count !== undefined &&
  group["social.living"] !== "alone" &&
  wantedBy.some((path) => group[path] === undefined);

/** Whether females will join males, of which there are fewer than belong together. */
export function awaitsFemales(group: Counted & { readonly party: Pick<Animals, "sex"> }): boolean {
  const { sex, kin } = group.party;
  if (sex !== "male" || kin.count === undefined) return false;
  const { count = kin.count } = wantedKin(group);
  return count > kin.count;
}

/** What tells of how many animals those of a kind live together. */
const togetherBy = ["social.group", "social.living"] as const;

type Together = { readonly party: { readonly kin: Kin } } & {
  readonly [Path in (typeof togetherBy)[number]]?: TraitValue<Path>;
};

/** Whether it is one animal, of a kind of which no more are wanted; undefined where nobody knows that. */
export function staysAlone(group: Together): boolean | undefined {
  if (group.party.kin.count !== 1) return false;
  const living = group["social.living"];
  if (living === "alone") return true;
  const least = living && group["social.group"];
  return least && leastNumber(least, 1) === 1;
}
