import { decimal } from "../../../decimal";
import type { Act } from "../../../species";
import {
  areBullies,
  canHappen,
  comingOf,
  harmsFinsOrSkin,
  isOfChase,
  livesOnGround,
  ofBrood,
  reaches,
} from "../../animals/acts";
import { grownLength, grownPreyLength, longestLength, preyLength } from "../../animals/lengths";
import { placeOf } from "../../animals/rivals";
import { besideWanted, type WantedBy, wantedBy } from "../../animals/wanted";
import type { GivenCondition } from "../../engine/rule/finding";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";
import type { ThresholdValues } from "../../threshold-values";
import { sparingBySex } from "../shared/by-sex";
import { coverBeside } from "../shared/cover-beside";
import {
  type ActAnswer,
  actMeasures,
  deadly,
  judgeTowards,
  restricts,
  roomAndSight,
  saidOnce,
} from "../shared/judge-act";

type Doer = SeenParty<
  "temperament.acts" | "size.adultLength",
  "space.zones" | "space.territory" | "space.openWater" | "diet.pace" | WantedBy
>;
type Other = SeenParty<
  "size.adultLength",
  "space.zones" | "appearance.longFins" | "space.openWater" | "diet.pace" | "temperament.acts" | WantedBy
>;
type Deciding = Pick<
  ThresholdValues,
  "coverAgainstChase" | "clearlySmaller" | "muchSmaller" | "roomBesideBrood" | "groundBesideBrood"
>;

/**
 * What does it do to other species?
 *
 * Killing and wounding whoever is near block, or restrict to the sex that does neither where the plan states none; a brood
 * that is defended with bites needs room beside it, more for those that live on the ground, for they come back in the dark;
 * whoever is only chased needs cover to get out of sight, and where it is chased for want of room, it needs that only if it
 * cannot get away. Who chases anyone at any time, or is fast and chases whatever is smaller, leaves no peace to what cannot
 * get away from it, nor to fish half as long or less that are not fast, which blocks. Young that are harmed for being
 * small, and would not be once grown, restrict to the length at which they enter. Where only the females that will join
 * males would harm or be harmed, it restricts to males. A bully chases all that are not clearly larger.
 */
export const actsOthers = /* @__PURE__ */ ownRule({
  id: "acts-others",
  way: "each-way",
  between: "two-species",
  needs: { from: ["temperament.acts", "size.adultLength"], to: ["size.adultLength"] },
  uses: {
    from: /* @__PURE__ */ besideWanted("space.zones", "space.territory", "space.openWater", "diet.pace"),
    to: /* @__PURE__ */ besideWanted(
      "space.zones",
      "appearance.longFins",
      "space.openWater",
      "diet.pace",
      "temperament.acts",
    ),
  },
  mayAdd: wantedBy,
  mayRestrict: ["space.territory", "space.zones", "appearance.longFins", "diet.pace", "temperament.acts"],
  decidesBy: ["coverAgainstChase", "clearlySmaller", "muchSmaller", "roomBesideBrood", "groundBesideBrood"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures: actMeasures,
  judge: ({ from, to, thresholds }) => {
    const acts = sparingBySex(from, to, (doer, other) => actsOn(doer, other, thresholds));
    return saidOnce([...acts, ...bullied(from, to, thresholds)]);
  },
});

/** What it does to the other by the acts of its kind, one after the other. */
const actsOn = (from: Doer, to: Other, thresholds: Deciding): Iterable<ActAnswer> =>
  comingOf(from["temperament.acts"], (act) => {
    const fallsOnIt =
      !harmsFinsOrSkin(act) &&
      (act.does !== "chases" || isOfChase(to.party)) &&
      falls(act, from, to, thresholds) &&
      reaches(act, from["space.zones"], to["space.zones"]) &&
      canHappen(act, from.party, to.party);
    return fallsOnIt ? judged(act, from, to, thresholds) : [];
  });

function judged(act: Act, from: Doer, to: Other, thresholds: Deciding): readonly ActAnswer[] {
  const removedBy = (when: Act["when"]) => [
    (ofBrood(when) && besideBrood(act, from, to, thresholds)) ||
      coverBeside(thresholds.coverAgainstChase, from, to),
  ];
  const instead = act.target === "long-finned" ? shortFinned : undefined;
  if (isChasedForGood(act, from, to, thresholds)) return [deadly(act, from.party)];
  if (act.does === "chases" && act.when === "crowded" && !canGetAway(to))
    return restricts(act, from.party, removedBy(act.when));
  const found = judgeTowards(act, from.party, { removedBy, instead });
  const least = clearlySmaller(act, from, thresholds);
  const outgrowsIt = act.target === "smaller" && grownPreyLength(to.party, to["size.adultLength"]) >= least;
  return outgrowsIt && found.some(({ weight }) => weight === "blocking")
    ? restricts(act, from.party, [{ on: "group.length", of: "to", wanted: { min: least } }])
    : found;
}

const shortFinned: GivenCondition = { on: "group.longFins", of: "to", wanted: { oneOf: [false] } };

/**
 * Whether it is chased at any time and cannot hold out: by what chases anyone, or is fast and chases the smaller ones, and
 * is not much smaller, if it cannot get away; by what is twice as long or more, unless it is fast, for it has no rest
 * wherever both live.
 */
function isChasedForGood(
  { does, target, when = "always" }: Act,
  from: Doer,
  to: Other,
  { muchSmaller: share }: Deciding,
): boolean {
  if (does !== "chases" || when !== "always") return false;
  const other = to["size.adultLength"];
  const doer = largestOf(from);
  const isHalfAsLong = largestOf(to) <= decimal(share * doer);
  if (to.party.kind === "fish" && to["diet.pace"] !== "fast" && isHalfAsLong) return true;
  const now = preyLength(to.party, other) ?? 0;
  const isMeant = target === "any" || (target === "smaller" && (from["diet.pace"] ?? "fast") === "fast");
  return isMeant && !canGetAway(to) && doer >= decimal(share * now);
}

/** The length in cm of the larger sex, whichever is kept: the other does hardly less, and bears hardly less. */
const largestOf = ({
  party,
  "size.adultLength": lengths,
}: Pick<Doer, "party" | "size.adultLength">): number => longestLength(party, lengths);

/**
 * Whether it holds out against a pursuer: slow ones do not, nor those with long fins that are neither fast nor bite others
 * off, males and females alike.
 */
const canGetAway = (other: Other): boolean => {
  const pace = other["diet.pace"] ?? "slow";
  if (pace === "fast") return true;
  return pace === "ordinary" && (other["appearance.longFins"] === false || bitesOthers(other));
};

/** Whether it bites others off, of either sex. Of what nobody stated that is not known. */
const bitesOthers = ({ "temperament.acts": acts = [] }: Other): boolean =>
  acts.some(({ does, target, doer }) => does === "bites" && target === "any" && doer === undefined);

/** A floor of which the brood's territory takes a part only, a smaller part where it bites those that live on the ground. */
function besideBrood(
  { does }: Act,
  from: Doer,
  to: Other,
  { roomBesideBrood, groundBesideBrood }: Deciding,
): GivenCondition | undefined {
  const area = placeOf(from["space.territory"])?.area;
  if (area === undefined) return undefined;
  const places = does === "bites" && livesOnGround(to["space.zones"]) ? groundBesideBrood : roomBesideBrood;
  return { on: "tank.footprint", wanted: { min: places * area } };
}

/** What an animal that is a bully by itself does to all that are not clearly larger and use its part of the water. */
function bullied(from: Doer, to: Other, { clearlySmaller: share }: Deciding): readonly ActAnswer[] {
  if (!areBullies(from.party) || !isOfChase(to.party)) return [];
  const chase: Act = { does: "chases", target: "any" };
  const isLarger =
    decimal((preyLength(to.party, to["size.adultLength"]) ?? 0) * share) >
    grownLength(from.party, from["size.adultLength"]);
  if (isLarger || !reaches(chase, from["space.zones"], to["space.zones"])) return [];
  return restricts(chase, from.party, roomAndSight(2, placeOf(from["space.territory"])?.area));
}

/** Whether the other is one whom the act is aimed at. What nobody stated counts as so. */
function falls(act: Act, from: Doer, to: Other, thresholds: Deciding): boolean {
  const { target } = act;
  if (target === "smaller")
    return (preyLength(to.party, to["size.adultLength"]) ?? 0) < clearlySmaller(act, from, thresholds);
  if (target === "long-finned") return to["appearance.longFins"] ?? true;
  return target === "any";
}

/** The length in cm below which another is clearly smaller: beside a chaser, than the larger sex. */
function clearlySmaller({ does }: Act, from: Doer, { clearlySmaller: share }: Deciding): number {
  const doer = does === "chases" ? largestOf(from) : grownLength(from.party, from["size.adultLength"]);
  return decimal(share * doer);
}
