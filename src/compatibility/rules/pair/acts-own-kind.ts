import type { Condition, SideName } from "../../finding";
import { defineRule, type Seen } from "../../rule";
import { type Act, canHappen } from "../shared/acts";
import { judgeAct } from "../shared/judge-act";

type Doer = Seen<"temperament.acts", "social.living" | "social.group">;

export const actsOwnKind = defineRule({
  id: "acts-own-kind",
  question: "What does it do to its own kind, and to rivals of its sex?",
  way: "each-way",
  needs: { from: ["temperament.acts"], to: [] },
  uses: { from: ["social.living", "social.group"], to: [] },
  mayYield: ["blocking", "restricting", "advisory"],
  judge: ({ from, to }) => {
    if (from.party.species.id !== to.party.species.id) return [];
    return from["temperament.acts"]
      .filter(({ does, target }) => does !== "nips-fins" && ["own-sex", "own-kind", "any"].includes(target))
      .filter((act) => canHappen(act, from.party, to.party))
      .map((act) => judgeAct(act, conditionOf(act, from)));
  },
});

/** What removes the act: no brood, one of the sex, a group in which no animal takes all of it, or no company. */
function conditionOf({ doer = "male", target, when }: Act, from: Doer): Condition<SideName> {
  if (when === "breeding" || when === "guarding-brood")
    return { on: "group.pairs", of: "from", within: { max: 0 } };
  if (target === "own-sex")
    return { on: doer === "male" ? "group.males" : "group.females", of: "from", within: { max: 1 } };
  const { "social.living": living, "social.group": group } = from;
  const spreads = (living === "shoal" || living === "group") && group;
  return {
    on: "group.count",
    of: "from",
    within: spreads ? { min: group.least } : { max: living === "pair" ? 2 : 1 },
  };
}
