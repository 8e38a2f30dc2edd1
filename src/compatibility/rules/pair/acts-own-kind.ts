import type { Kin } from "../../../plan";
import type { Act, TraitValue } from "../../../species";
import { canHappen, ofBrood } from "../../animals/acts";
import { leastNumber } from "../../animals/least-number";
import { defineRule } from "../../engine/rule/define-rule";
import type { GivenCondition } from "../../engine/rule/finding";
import type { SeenParty } from "../../engine/rule/rule";
import { actMeasures, judgeAct } from "../shared/judge-act";

type Doer = SeenParty<"temperament.acts", "social.living" | "social.group" | "social.femalesPerMale">;

const targets: readonly Act["target"][] = ["own-sex", "other-sex", "own-kind", "smaller", "any"];

export const actsOwnKind = defineRule({
  id: "acts-own-kind",
  question: "What does it do to its own kind, and to rivals of its sex?",
  way: "each-way",
  needs: { from: ["temperament.acts"] },
  uses: { from: ["social.living", "social.group", "social.femalesPerMale"] },
  decidesBy: ["coverAgainstChase", "spreadsFrom"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures: actMeasures,
  judge: ({ from, to, thresholds }) => {
    if (from.party.id !== to.party.id) return [];
    return from["temperament.acts"]
      .filter(({ does, target }) => does !== "nips-fins" && targets.includes(target))
      .filter((act) => canHappen(act, from.party, to.party) && findsVictim(act, from.party.kin))
      .map((act) => judgeAct(act, from.party, removedBy(act, from, thresholds.spreadsFrom), thresholds));
  },
});

/** Whether there is an animal of its kind for the act to fall on: a brood is guarded by two against the others. */
function findsVictim({ when }: Act, { count }: Kin): boolean {
  return when !== "guarding-brood" || count !== 2;
}

/** One of the sex, enough females, a number in which no animal takes all of it, or no company of its kind. */
function removedBy(act: Act, from: Doer, spreadsFrom: number): GivenCondition {
  const { doer = "male", target } = act;
  const { party, "social.living": living, "social.group": group, "social.femalesPerMale": ratio } = from;
  const of = "from";
  const sparring = spars(act) && isGregarious(living) && group && group.least >= spreadsFrom;
  if (target === "own-sex" && !sparring)
    return { on: doer === "male" ? "group.males" : "group.females", of, wanted: { max: 1 } };
  if (target === "other-sex" && ratio) return { on: "group.femalesPerMale", of, wanted: { min: ratio } };
  if (target === "other-sex") return { on: "group.pairs", of, wanted: { max: 0 } };
  if (living === "pair") return { on: "group.count", of, wanted: { max: 2 } };
  if (ofBrood(act.when)) return { on: "group.pairs", of, wanted: { max: 0 } };
  const spreads = living && living !== "alone" && group && group.least > 1;
  return {
    on: "group.count",
    of,
    wanted: spreads ? { min: leastNumber(group, party.kin.count ?? 1) } : { max: 1 },
  };
}

/** Rivals that only chase each other spread it over a shoal. */
const spars = ({ does }: Act) => does === "chases";
const isGregarious = (living: TraitValue<"social.living"> | undefined) =>
  living === "shoal" || living === "group";
