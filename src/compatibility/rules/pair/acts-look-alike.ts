import type { Condition, SideName } from "../../finding";
import { mayHave } from "../../kin";
import { defineRule, type Seen } from "../../rule";
import type { ThresholdValues } from "../../thresholds";
import { type Act, canHappen, ofBrood } from "../shared/acts";
import { judgeAct } from "../shared/judge-act";
import { shareAny } from "../shared/share-any";

type Appearance = Seen<never, "appearance.looks">;

export const actsLookAlike = defineRule({
  id: "acts-look-alike",
  question: "Does it take the other for one of its own, and what does it do then?",
  way: "each-way",
  needs: { from: ["temperament.acts"], to: [] },
  uses: { from: ["appearance.looks"], to: ["appearance.looks"] },
  decidesBy: ["coverAgainstChase"],
  mayYield: ["blocking", "restricting", "advisory"],
  judge: ({ from, to, thresholds }) => {
    if (from.party.species.id === to.party.species.id || !shareAny(shown(from), shown(to))) return [];
    return from["temperament.acts"]
      .filter(({ target }) => target === "look-alike")
      .filter((act) => canHappen(act, from.party, to.party))
      .map((act) => judgeAct(act, from.party, removedBy(act, thresholds), thresholds));
  },
});

/** No pair that breeds, none of the sex that does it, or cover to get out of sight. */
function removedBy({ doer, when }: Act, thresholds: ThresholdValues): Condition<SideName> {
  if (ofBrood(when)) return { on: "group.pairs", of: "from", within: { max: 0 } };
  if (doer) return { on: doer === "male" ? "group.males" : "group.females", of: "from", within: { max: 0 } };
  return { on: "tank.cover", within: { min: thresholds.coverAgainstChase } };
}

/** The markings that some animal of the party shows. */
function shown({ party, "appearance.looks": looks }: Appearance) {
  return looks?.filter(({ sex }) => !sex || mayHave(party, sex)).map(({ tag }) => tag);
}
