import { mayHave } from "../../../plan/inner";
import type { Act } from "../../../species";
import { canHappen, ofBrood, reaches } from "../../animals/acts";
import { placeOf } from "../../animals/rivals";
import { defineRule } from "../../engine/rule/define-rule";
import type { SeenParty } from "../../engine/rule/rule";
import { coverBeside } from "../shared/cover-beside";
import { type ActAnswer, actMeasures, judgeTowards, roomAndSight, toKnow } from "../shared/judge-act";
import { shareAny } from "../shared/share-any";

type Doer = SeenParty<
  "temperament.acts",
  "appearance.looks" | "space.zones" | "space.territory" | "space.openWater"
>;
type Other = SeenParty<never, "space.openWater">;

/** Who kills or wounds what it takes for its own cannot live beside it; who chases it needs room and something between. */
export const actsLookAlike = /* @__PURE__ */ defineRule({
  id: "acts-look-alike",
  question: "Does it take the other for one of its own, and what does it do then?",
  way: "each-way",
  needs: { from: ["temperament.acts"] },
  uses: {
    from: ["appearance.looks", "space.zones", "space.territory", "space.openWater"],
    to: ["appearance.looks", "space.zones", "space.openWater"],
  },
  mayRestrict: ["space.territory"],
  decidesBy: ["coverAgainstChase", "roomBesideBrood"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures: actMeasures,
  judge: ({ from, to, thresholds }) => {
    if (from.party.id === to.party.id || !shareAny(shown(from), shown(to))) return [];
    return from["temperament.acts"]
      .filter(({ target }) => target === "look-alike")
      .filter((act) => reaches(act, from["space.zones"], to["space.zones"]))
      .filter((act) => canHappen(act, from.party, to.party))
      .flatMap((act) => judged(act, from, to, thresholds));
  },
});

interface Deciding {
  readonly coverAgainstChase: number;
  readonly roomBesideBrood: number;
}

function judged(
  act: Act,
  from: Doer,
  to: Other,
  { coverAgainstChase, roomBesideBrood }: Deciding,
): readonly ActAnswer[] {
  if (act.does === "nips-fins" || act.does === "rasps-mucus") return [toKnow(act, from.party)];
  return judgeTowards(act, from.party, (when) => {
    const area = placeOf(from["space.territory"])?.area;
    if (ofBrood(when)) return roomAndSight(2, area && (roomBesideBrood * area) / 2);
    const apart = roomAndSight(2, area);
    return when === "crowded" ? [coverBeside(coverAgainstChase, from, to), ...apart] : apart;
  });
}

/** The markings that some animal of the party shows. */
function shown({ party, "appearance.looks": looks }: SeenParty<never, "appearance.looks">) {
  return looks?.filter(({ sex }) => !sex || mayHave(party, sex)).map(({ tag }) => tag);
}
