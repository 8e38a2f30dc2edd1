import { assessPairBy, type Outcomes, pairRules, type RuleId } from "../../../compatibility";
import { preyReach } from "../../../compatibility/inner";
import { factAt, type SpeciesProfile } from "../../../species";
import { lengthsMeant } from "../../../species/inner";
import { settles } from "./companions";
import { breadth } from "./shared-water";

/** How a species stands to others. */
export interface RelationsTo {
  /** Those that bring it out of hiding, and that nothing rules out. */
  readonly settlers: readonly SpeciesProfile[];
  /** Those that it brings out of hiding. */
  readonly settled: readonly SpeciesProfile[];
  /** Those whose grown animals it eats. */
  readonly prey: readonly SpeciesProfile[];
  /** Those that eat it when it is grown. */
  readonly hunters: readonly SpeciesProfile[];
  /** Those that have eaten before it gets to the food, and that nothing else rules out. */
  readonly robbers: readonly SpeciesProfile[];
  /** Those that take it, or that it takes, for one of its own kind, unless they could never meet in a tank. */
  readonly lookAlikes: readonly SpeciesProfile[];
}

/** How a species stands to each of some others, by the rules that say so. */
export function relationsTo(
  profile: SpeciesProfile,
  candidates: readonly SpeciesProfile[],
  { outcome }: Outcomes,
): RelationsTo {
  const others = candidates.flatMap((species, index) =>
    species.id === profile.id ? [] : [{ species, ruledOut: outcome(0, index + 1) === "unsuitable" }],
  );
  const goingWith = others.filter(({ ruledOut }) => !ruledOut).map(({ species }) => species);
  const ruledOut = others.filter((other) => other.ruledOut).map(({ species }) => species);
  const all = others.map(({ species }) => species);
  return {
    settlers: goingWith.filter((other) => settles(other, profile)),
    settled: goingWith.filter((other) => settles(profile, other)),
    prey: ruledOut.filter(
      (other) => mayEat(profile, other) && isTold("predation", profile, other, "blocking"),
    ),
    hunters: ruledOut.filter(
      (other) => mayEat(other, profile) && isTold("predation", other, profile, "blocking"),
    ),
    robbers: goingWith.filter(
      (other) => robs(other, profile) && isTold("feeding-competition", other, profile, "restricting"),
    ),
    lookAlikes: all.filter(
      (other) =>
        mayMistake(profile, other) &&
        !couldNeverMeet(profile, other) &&
        (isTold("acts-look-alike", profile, other) || isTold("acts-look-alike", other, profile)),
    ),
  };
}

/** Whether two could never meet in a tank: one eats the other, or they are kept in no water in common. */
const couldNeverMeet = (one: SpeciesProfile, other: SpeciesProfile) =>
  breadth(one, other) === 0 ||
  isTold("predation", one, other, "blocking") ||
  isTold("predation", other, one, "blocking");

/** Whether a rule says something of one that falls on the other. */
function isTold(
  rule: RuleId,
  from: SpeciesProfile,
  to: SpeciesProfile,
  weight?: "blocking" | "restricting",
): boolean {
  const rules = pairRules.filter(({ id }) => id === rule);
  return assessPairBy(rules, { species: from }, { species: to }).findings.some(
    (finding) =>
      finding.from === 0 && finding.to === 1 && (weight === undefined || finding.weight === weight),
  );
}

/** Whether the length of the smallest grown ones lies within a hunter's reach: what else decides, the rule looks at. */
function mayEat(hunter: SpeciesProfile, prey: SpeciesProfile): boolean {
  const reach = preyReach(hunter).find(({ kind }) => kind === prey.taxonomy.kind);
  const lengths = factAt(prey, "size.adultLength")?.value;
  if (!reach || !lengths) return false;
  const smallest = Math.min(...lengthsMeant(lengths, "usual").map(({ total }) => total.min));
  return smallest <= Math.max(reach.tries, reach.eatsEelLike);
}

const robs = (one: SpeciesProfile, other: SpeciesProfile) =>
  factAt(one, "diet.pace")?.value === "fast" && factAt(other, "diet.pace")?.value === "slow";

const mayMistake = (one: SpeciesProfile, other: SpeciesProfile) =>
  [one, other].some((species) =>
    (factAt(species, "temperament.acts")?.value ?? []).some(({ target }) => target === "look-alike"),
  );
