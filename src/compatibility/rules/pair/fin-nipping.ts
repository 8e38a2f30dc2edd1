import { decimal } from "../../../decimal";
import type { Act, Zone } from "../../../species";
import { canHappen, livesOnGround, reaches, reachesAsleep, reachesFeeding } from "../../animals/acts";
import { grownLength, grownPreyLength, preyLength } from "../../animals/lengths";
import { besideWanted, type WantedBy, wantedBy } from "../../animals/wanted";
import type { Judged } from "../../engine/rule/finding";
import type { MeasureKinds } from "../../engine/rule/measures";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";
import type { ThresholdValues } from "../../threshold-values";
import { sparingBySex } from "../shared/by-sex";
import { coverBeside } from "../shared/cover-beside";
import { isClawed } from "../shared/meal";

type Nipper = SeenParty<
  "temperament.acts" | "size.adultLength",
  "space.zones" | "diet.reach" | "diet.light" | "space.openWater" | WantedBy
>;
type Other = SeenParty<
  "size.adultLength",
  | "appearance.longFins"
  | "diet.pace"
  | "diet.reach"
  | "space.zones"
  | "diet.light"
  | "space.openWater"
  | WantedBy
>;
type Deciding = Pick<ThresholdValues, "muchSmaller" | "coverAgainstChase">;
type Answer = Judged<"blocking" | "restricting" | "advisory", typeof measures>;

/** Where it comes to feed, or when it comes while the other sleeps. */
const measures = { feeds: "zone", hunts: "light" } as const satisfies MeasureKinds;

const ownKind: readonly Act["target"][] = ["own-sex", "other-sex", "own-kind", "any"];

/**
 * Does it bite pieces out of the other's fins?
 *
 * Long fins are bitten until they are gone; who nips anyone wears out those that are slow or much smaller, and claws wear
 * out whatever shorter rests beside them on the ground, and may seize in its sleep what is longer or swims by day. Who nips
 * only where it has too little room or company leaves alone what can get away; slow fish with long fins need cover from it.
 * Who feeds where long fins live comes there every day, and whoever is about at night to those that sleep in the next part
 * of the water: nobody can tell whether it nips them there; of long fins that feed where it lives that is worth knowing.
 * Young that grow out of being small enter longer. Where one sex would be spared and the plan names none, it restricts to
 * that; where only the females that will join males would harm or be harmed, to males. Its own kind holds its own.
 */
export const finNipping = /* @__PURE__ */ ownRule({
  id: "fin-nipping",
  way: "each-way",
  needs: { from: ["temperament.acts", "size.adultLength"], to: ["size.adultLength"] },
  uses: {
    from: /* @__PURE__ */ besideWanted("space.zones", "diet.reach", "diet.light", "space.openWater"),
    to: /* @__PURE__ */ besideWanted(
      "appearance.longFins",
      "diet.pace",
      "diet.reach",
      "space.zones",
      "diet.light",
      "space.openWater",
    ),
  },
  mayAdd: wantedBy,
  mayRestrict: ["appearance.longFins", "diet.pace", "space.zones", "diet.reach", "diet.light"],
  decidesBy: ["muchSmaller", "coverAgainstChase"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures,
  judge: ({ from, to, thresholds }) =>
    from["temperament.acts"].some(isNip)
      ? sparingBySex(from, to, (nipper, other) => bitten(nipper, other, thresholds))
      : [],
});

const isNip = ({ does }: Act) => does === "nips-fins";

function bitten(from: Nipper, to: Other, thresholds: Deciding): readonly Answer[] {
  if (to.party.kind !== "fish" || isOneAnimal(from, to)) return [];
  const nips = from["temperament.acts"].filter((act) => isNip(act) && canHappen(act, from.party, to.party));
  const sameKind = from.party.id === to.party.id;
  if (sameKind && from.party.form === to.party.form)
    return nips.some(({ target }) => ownKind.includes(target)) ? [toKnow] : [];
  const long = to["appearance.longFins"] ?? true;
  const atIt = nips.filter(
    ({ target }) =>
      target === "any" || (target === "long-finned" && long) || (sameKind && ownKind.includes(target)),
  );
  const awake = atIt.filter((act) => reaches(act, from["space.zones"], to["space.zones"]));
  if (awake.length > 0) return [fate(awake, long, from, to, thresholds)];
  const feeding = atIt.filter((act) => long && reachesFeeding(act, from["diet.reach"], to["space.zones"]));
  if (feeding.length > 0)
    return atTimes(fate(feeding, long, from, to, thresholds), {
      feeds: sharedZone(from["diet.reach"], to["space.zones"]),
    });
  const asleep = atIt.filter((act) => reachesAsleep(act, from, to));
  if (asleep.length > 0) return atTimes(fate(asleep, long, from, to, thresholds), { hunts: "night" });
  const feeds = sharedZone(to["diet.reach"], from["space.zones"]);
  const isVisited = long && feeds && atIt.some(({ when = "always" }) => when === "always");
  return isVisited ? [{ ...toKnow, measures: { feeds } }] : [];
}

/** Whether both are one animal by itself. */
const isOneAnimal = (from: Nipper, to: Other) => from.party === to.party && from.party.kin.count === 1;

const toKnow = { weight: "advisory", watchFor: "torn-fins" } as const;

/** The first part of the water where one feeds and the other lives. */
const sharedZone = (reach: readonly Zone[] | undefined, zones: readonly Zone[] | undefined) =>
  reach?.find((zone) => zones?.includes(zone));

/** What comes of nips that reach the other at times: those that would harm it for good may do so. */
function atTimes(found: Answer, given: NonNullable<Answer["measures"]>): readonly Answer[] {
  if (found.weight === "restricting") return [found];
  return found.weight === "blocking" ? [{ ...toKnow, couldBe: "blocking", measures: given }] : [];
}

/** What those nips do that reach the other. */
function fate(
  acts: readonly Act[],
  long: boolean,
  from: Nipper,
  to: Other,
  { muchSmaller, coverAgainstChase }: Deciding,
): Answer {
  const always = acts.filter(({ when = "always" }) => when === "always");
  const ofAny = always.some(({ target }) => target === "any");
  const slow = (to["diet.pace"] ?? "slow") === "slow" || restsWithinClaws(from, to);
  const now = preyLength(to.party, to["size.adultLength"]) ?? 0;
  const grown = Math.max(now, grownPreyLength(to.party, to["size.adultLength"]));
  const least = decimal(muchSmaller * grownLength(from.party, from["size.adultLength"]));
  if (ofAny && (slow || grown < least)) return { weight: "blocking", watchFor: "torn-fins" };
  if (long && (ofAny || always.some(({ target }) => target === "long-finned"))) {
    const instead = { on: "group.longFins", of: "to", wanted: { oneOf: [false] } } as const;
    return { weight: "blocking", watchFor: "torn-fins", instead };
  }
  if (long && slow && acts.some(({ when }) => when === "crowded")) {
    const condition = coverBeside(coverAgainstChase, from, to);
    return { weight: "restricting", watchFor: "torn-fins", condition };
  }
  const sleepsBeside = isClawed(from.party.kind) && always.some((act) => reachesAsleep(act, from, to));
  if (ofAny && (sleepsBeside || restsBesideClaws(from, to)))
    return { ...toKnow, couldBe: "blocking", measures: { hunts: "night" } };
  if (!ofAny || now >= least) return toKnow;
  const condition = { on: "group.length", of: "to", wanted: { min: least } } as const;
  return { weight: "restricting", watchFor: "torn-fins", condition };
}

/** Whether it lives on the ground alone, beside the claws of what is longer. */
function restsWithinClaws(from: Nipper, to: Other): boolean {
  const length = preyLength(to.party, to["size.adultLength"]) ?? 0;
  return restsBesideClaws(from, to) && length < grownLength(from.party, from["size.adultLength"]);
}

/** Whether it lives on the ground alone, beside claws. */
const restsBesideClaws = (from: Nipper, to: Other): boolean =>
  isClawed(from.party.kind) && livesOnGround(to["space.zones"]);
