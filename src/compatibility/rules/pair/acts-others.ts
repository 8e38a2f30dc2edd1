import { decimal } from "../../../decimal";
import type { Act, TraitValue } from "../../../species";
import { canHappen, ofBrood } from "../../animals/acts";
import { hunterLength, preyLength } from "../../animals/lengths";
import { defineRule } from "../../engine/rule/define-rule";
import type { GivenCondition } from "../../engine/rule/finding";
import type { SeenParty } from "../../engine/rule/rule";
import type { ThresholdValues } from "../../thresholds";
import { actMeasures, judgeAct } from "../shared/judge-act";
import { shareAny } from "../shared/share-any";

type Doer = SeenParty<"temperament.acts" | "size.adultLength", "space.zones" | "space.territory">;
type Other = SeenParty<"size.adultLength", "space.zones" | "appearance.longFins">;
type Deciding = Pick<ThresholdValues, "coverAgainstChase" | "clearlySmaller" | "roomBesideBrood">;

export const actsOthers = defineRule({
  id: "acts-others",
  question: "What does it do to other species?",
  way: "each-way",
  needs: { from: ["temperament.acts", "size.adultLength"], to: ["size.adultLength"] },
  uses: { from: ["space.zones", "space.territory"], to: ["space.zones", "appearance.longFins"] },
  decidesBy: ["coverAgainstChase", "clearlySmaller", "roomBesideBrood"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures: actMeasures,
  judge: ({ from, to, thresholds }) => {
    if (from.party.id === to.party.id) return [];
    return from["temperament.acts"]
      .filter(({ does }) => does !== "nips-fins" && does !== "rasps-mucus")
      .filter(({ does }) => does !== "chases" || canFlee(to))
      .filter((act) => falls(act, from, to, thresholds))
      .filter(
        (act) => shareAny(from["space.zones"], to["space.zones"]) && canHappen(act, from.party, to.party),
      )
      .map((act) => judgeAct(act, from.party, removedBy(act, from, thresholds), thresholds));
  },
});

/** Company that is not smaller, room out of the parents' reach, or cover to get out of sight. */
function removedBy(act: Act, from: Doer, thresholds: Deciding): GivenCondition {
  if (act.target === "smaller")
    return { on: "group.length", of: "to", wanted: { min: clearlySmaller(from, thresholds) } };
  if (ofBrood(act.when)) return awayFromBrood(from["space.territory"], thresholds);
  return { on: "tank.cover", wanted: { min: thresholds.coverAgainstChase } };
}

/** A floor of which the territory takes a part only; where none is known to be held, no pair that breeds. */
function awayFromBrood(
  territory: TraitValue<"space.territory"> | undefined,
  { roomBesideBrood }: Deciding,
): GivenCondition {
  if (!territory || territory === "none") return { on: "group.pairs", of: "from", wanted: { max: 0 } };
  return { on: "tank.footprint", wanted: { min: roomBesideBrood * territory.area } };
}

/** A snail or a mussel cannot be chased. */
const canFlee = ({ party }: Other) => party.kind !== "snail" && party.kind !== "mussel";

/** Whether the other is one whom the act is aimed at. What nobody stated counts as so. */
function falls({ target }: Act, from: Doer, to: Other, thresholds: Deciding): boolean {
  if (target === "smaller")
    return (preyLength(to.party, to["size.adultLength"]) ?? 0) < clearlySmaller(from, thresholds);
  if (target === "long-finned") return to["appearance.longFins"] ?? true;
  return target === "any";
}

/** The length in cm below which another is clearly smaller. */
function clearlySmaller(from: Doer, { clearlySmaller: share }: Deciding): number {
  return decimal(share * hunterLength(from.party, from["size.adultLength"]));
}
