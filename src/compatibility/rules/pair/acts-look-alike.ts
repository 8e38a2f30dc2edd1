import { mayHave } from "../../../plan/inner";
import type { Act } from "../../../species";
import { canHappen, ofBrood } from "../../animals/acts";
import { defineRule } from "../../engine/rule/define-rule";
import type { GivenCondition } from "../../engine/rule/finding";
import type { SeenParty } from "../../engine/rule/rule";
import { actMeasures, judgeAct } from "../shared/judge-act";
import { shareAny } from "../shared/share-any";

export const actsLookAlike = defineRule({
  id: "acts-look-alike",
  question: "Does it take the other for one of its own, and what does it do then?",
  way: "each-way",
  needs: { from: ["temperament.acts"] },
  uses: { from: ["appearance.looks"], to: ["appearance.looks"] },
  decidesBy: ["coverAgainstChase"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures: actMeasures,
  judge: ({ from, to, thresholds }) => {
    if (from.party.id === to.party.id || !shareAny(shown(from), shown(to))) return [];
    return from["temperament.acts"]
      .filter(({ target }) => target === "look-alike")
      .filter((act) => canHappen(act, from.party, to.party))
      .map((act) => judgeAct(act, from.party, removedBy(act, thresholds), thresholds));
  },
});

interface Cover {
  readonly coverAgainstChase: number;
}

/** No pair that breeds, none of the sex that does it, or cover to get out of sight. */
function removedBy({ doer, when }: Act, { coverAgainstChase }: Cover): GivenCondition {
  if (ofBrood(when)) return { on: "group.pairs", of: "from", wanted: { max: 0 } };
  if (doer) return { on: doer === "male" ? "group.males" : "group.females", of: "from", wanted: { max: 0 } };
  return { on: "tank.cover", wanted: { min: coverAgainstChase } };
}

/** The markings that some animal of the party shows. */
function shown({ party, "appearance.looks": looks }: SeenParty<never, "appearance.looks">) {
  return looks?.filter(({ sex }) => !sex || mayHave(party, sex)).map(({ tag }) => tag);
}
