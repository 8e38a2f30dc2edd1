import { decimal } from "../../../decimal";
import type { TraitValue as Value } from "../../../species";
import type { Condition, SideName } from "../../finding";
import { defineRule, type Seen } from "../../rule";
import type { ThresholdValues } from "../../thresholds";
import { type Act, canHappen, ofBrood } from "../shared/acts";
import { judgeAct } from "../shared/judge-act";
import { shareAny } from "../shared/share-any";
import { hunterLength, preyLength } from "../shared/total-length";

type Doer = Seen<"temperament.acts" | "size.adultLength", "space.zones" | "space.territory">;
type Other = Seen<"size.adultLength", "space.zones" | "appearance.longFins">;

export const actsOthers = defineRule({
  id: "acts-others",
  question: "What does it do to other species?",
  way: "each-way",
  needs: { from: ["temperament.acts", "size.adultLength"], to: ["size.adultLength"] },
  uses: { from: ["space.zones", "space.territory"], to: ["space.zones", "appearance.longFins"] },
  decidesBy: ["coverAgainstChase", "clearlySmaller", "roomBesideBrood"],
  mayYield: ["blocking", "restricting", "advisory"],
  judge: ({ from, to, thresholds }) => {
    if (from.party.species.id === to.party.species.id) return [];
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
function removedBy(act: Act, from: Doer, thresholds: ThresholdValues): Condition<SideName> {
  if (act.target === "smaller")
    return { on: "group.length", of: "to", within: { min: clearlySmaller(from, thresholds) } };
  if (ofBrood(act.when)) return awayFromBrood(from["space.territory"], thresholds);
  return { on: "tank.cover", within: { min: thresholds.coverAgainstChase } };
}

/** A floor of which the territory takes a part only; where none is known to be held, no pair that breeds. */
function awayFromBrood(
  territory: Value<"space.territory"> | undefined,
  { roomBesideBrood }: ThresholdValues,
) {
  if (!territory || territory === "none")
    return { on: "group.pairs", of: "from", within: { max: 0 } } as const;
  return { on: "tank.footprint", within: { min: roomBesideBrood * territory.area } } as const;
}

/** A snail or a mussel cannot be chased. */
const canFlee = ({ party }: Pick<Other, "party">) =>
  party.species.taxonomy.kind !== "snail" && party.species.taxonomy.kind !== "mussel";

/** Whether the other is one whom the act is aimed at. What nobody stated counts as so. */
function falls({ target }: Act, from: Doer, to: Other, thresholds: ThresholdValues): boolean {
  if (target === "smaller")
    return (preyLength(to.party, to["size.adultLength"]) ?? 0) < clearlySmaller(from, thresholds);
  if (target === "long-finned") return to["appearance.longFins"] ?? true;
  return target === "any";
}

/** The length in cm below which another is clearly smaller. */
function clearlySmaller(from: Doer, { clearlySmaller: share }: ThresholdValues): number {
  return decimal(share * hunterLength(from.party, from["size.adultLength"]));
}
