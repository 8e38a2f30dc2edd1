import type { Condition, SideName } from "../../finding";
import { defineRule, type Seen } from "../../rule";
import type { ThresholdValues } from "../../thresholds";
import { type Act, canHappen } from "../shared/acts";
import { judgeAct } from "../shared/judge-act";
import { hunterLength, preyLength } from "../shared/total-length";

type Doer = Seen<"temperament.acts" | "size.adultLength", "space.zones">;
type Other = Seen<"size.adultLength", "space.zones" | "appearance.longFins">;

export const actsOthers = defineRule({
  id: "acts-others",
  question: "What does it do to other species?",
  way: "each-way",
  needs: { from: ["temperament.acts", "size.adultLength"], to: ["size.adultLength"] },
  uses: { from: ["space.zones"], to: ["space.zones", "appearance.longFins"] },
  decidesBy: ["coverAgainstChase"],
  mayYield: ["blocking", "restricting", "advisory"],
  judge: ({ from, to, thresholds }) => {
    if (from.party.species.id === to.party.species.id) return [];
    return from["temperament.acts"]
      .filter(({ does }) => does !== "nips-fins" && does !== "rasps-mucus")
      .filter((act) => falls(act, from, to))
      .filter((act) => meet(from, to) && canHappen(act, from.party, to.party))
      .map((act) => judgeAct(act, removedBy(act, from, thresholds), thresholds));
  },
});

/** Company that is not smaller, or cover to get out of sight. */
function removedBy({ target }: Act, from: Doer, thresholds: ThresholdValues): Condition<SideName> {
  if (target === "smaller") {
    return {
      on: "group.length",
      of: "to",
      within: { min: hunterLength(from.party, from["size.adultLength"]) },
    };
  }
  return { on: "tank.cover", within: { min: thresholds.coverAgainstChase } };
}

/** Whether the other is one whom the act is aimed at. What nobody stated counts as so. */
function falls({ target }: Act, from: Doer, to: Other): boolean {
  if (target === "smaller") return mayBeSmaller(from, to);
  if (target === "long-finned") return to["appearance.longFins"] ?? true;
  return target === "any";
}

function mayBeSmaller(from: Doer, to: Other): boolean {
  return (
    (preyLength(to.party, to["size.adultLength"]) ?? 0) < hunterLength(from.party, from["size.adultLength"])
  );
}

/** Whether the two use a zone in common. Zones nobody stated count as common. */
function meet({ "space.zones": mine }: Doer, { "space.zones": theirs }: Other): boolean {
  return !mine || !theirs || mine.some((zone) => theirs.includes(zone));
}
