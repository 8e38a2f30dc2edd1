import type { Condition, SideName } from "../../finding";
import { defineRule, type Seen } from "../../rule";
import { type Act, canHappen } from "../shared/acts";
import { judgeAct } from "../shared/judge-act";

type Doer = Seen<"temperament.acts", "social.living" | "social.group" | "social.femalesPerMale">;

const targets: readonly Act["target"][] = ["own-sex", "other-sex", "own-kind", "any"];

export const actsOwnKind = defineRule({
  id: "acts-own-kind",
  question: "What does it do to its own kind, and to rivals of its sex?",
  way: "each-way",
  needs: { from: ["temperament.acts"], to: [] },
  uses: { from: ["social.living", "social.group", "social.femalesPerMale"], to: [] },
  decidesBy: ["coverAgainstChase"],
  mayYield: ["blocking", "restricting", "advisory"],
  judge: ({ from, to, thresholds }) => {
    if (from.party.species.id !== to.party.species.id) return [];
    return from["temperament.acts"]
      .filter(({ does, target }) => does !== "nips-fins" && targets.includes(target))
      .filter((act) => canHappen(act, from.party, to.party))
      .map((act) => judgeAct(act, removedBy(act, from), thresholds));
  },
});

/** One of the sex, enough females, a group in which no animal takes all of it, or no company of its kind. */
function removedBy({ doer = "male", target }: Act, from: Doer): Condition<SideName> {
  const { "social.living": living, "social.group": group, "social.femalesPerMale": ratio } = from;
  const of = "from";
  if (target === "own-sex")
    return { on: doer === "male" ? "group.males" : "group.females", of, within: { max: 1 } };
  if (target === "other-sex") {
    return ratio
      ? { on: "group.femalesPerMale", of, within: { min: ratio } }
      : { on: "group.pairs", of, within: { max: 0 } };
  }
  const spreads = (living === "shoal" || living === "group") && group;
  return {
    on: "group.count",
    of,
    within: spreads ? { min: group.least } : { max: living === "pair" ? 2 : 1 },
  };
}
