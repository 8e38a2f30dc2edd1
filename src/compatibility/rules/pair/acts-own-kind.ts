import type { TraitValue as Value } from "../../../species";
import type { Condition, SideName } from "../../finding";
import type { Kin } from "../../kin";
import { defineRule, type Seen } from "../../rule";
import type { ThresholdValues } from "../../thresholds";
import { type Act, canHappen, ofBrood } from "../shared/acts";
import { judgeAct } from "../shared/judge-act";
import { leastNumber } from "../shared/least-number";

type Doer = Seen<"temperament.acts", "social.living" | "social.group" | "social.femalesPerMale">;

const targets: readonly Act["target"][] = ["own-sex", "other-sex", "own-kind", "smaller", "any"];

export const actsOwnKind = defineRule({
  id: "acts-own-kind",
  question: "What does it do to its own kind, and to rivals of its sex?",
  way: "each-way",
  needs: { from: ["temperament.acts"], to: [] },
  uses: { from: ["social.living", "social.group", "social.femalesPerMale"], to: [] },
  decidesBy: ["coverAgainstChase", "spreadsFrom"],
  mayYield: ["blocking", "restricting", "advisory"],
  judge: ({ from, to, thresholds }) => {
    if (from.party.species.id !== to.party.species.id) return [];
    return from["temperament.acts"]
      .filter(({ does, target }) => does !== "nips-fins" && targets.includes(target))
      .filter((act) => canHappen(act, from.party, to.party) && findsVictim(act, from.party.kin))
      .map((act) => judgeAct(act, from.party, removedBy(act, from, thresholds), thresholds));
  },
});

/** Whether there is an animal of its kind for the act to fall on: a brood is guarded by two against the others. */
function findsVictim({ when }: Act, { count }: Kin): boolean {
  return when !== "guarding-brood" || count !== 2;
}

/** One of the sex, enough females, a number in which no animal takes all of it, or no company of its kind. */
function removedBy(act: Act, from: Doer, { spreadsFrom }: ThresholdValues): Condition<SideName> {
  const { doer = "male", target } = act;
  const { party, "social.living": living, "social.group": group, "social.femalesPerMale": ratio } = from;
  const of = "from";
  const sparring = spars(act) && isGregarious(living) && group && group.least >= spreadsFrom;
  if (target === "own-sex" && !sparring)
    return { on: doer === "male" ? "group.males" : "group.females", of, within: { max: 1 } };
  if (target === "other-sex" && ratio) return { on: "group.femalesPerMale", of, within: { min: ratio } };
  if (target === "other-sex") return { on: "group.pairs", of, within: { max: 0 } };
  if (living === "pair") return { on: "group.count", of, within: { max: 2 } };
  if (ofBrood(act.when)) return { on: "group.pairs", of, within: { max: 0 } };
  const spreads = living && living !== "alone" && group && group.least > 1;
  return {
    on: "group.count",
    of,
    within: spreads ? { min: leastNumber(group, party.kin.count ?? 1) } : { max: 1 },
  };
}

/** Rivals that only chase each other spread it over a shoal. */
const spars = ({ does }: Act) => does === "chases";
const isGregarious = (living: Value<"social.living"> | undefined) => living === "shoal" || living === "group";
