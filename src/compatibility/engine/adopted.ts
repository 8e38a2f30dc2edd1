import { onceOfEach } from "../../made-once";
import type { ThresholdValues } from "../threshold-values";
import type { Standing } from "./answers/standing";
import { answerOf, type WorldAnswer } from "./answers/world-answer";
import { decidingBy } from "./rule/deciding";
import { mayRuleOut } from "./rule/decisive-traits";
import type { PartyRole } from "./rule/finding";
import type { PairRule, Rule } from "./rule/rule";
import { isAskedOf } from "./sides/is-asked-of";
import { adopted, plainView } from "./sides/plain-view";
import { isKnownBy, type Subject } from "./sides/subject";

/**
 * What a rule answers of pairs on the adopted values alone. It sees each of them as often as it likes at the price of once:
 * for many pairs of the same subjects. Undefined where the rule may rule out and cannot tell, since a trait is not known.
 */
export function adoptedAnswers(
  rule: PairRule,
  values: ThresholdValues,
): (from: Subject, to: Subject) => readonly Standing[] | undefined {
  const { thresholds } = decidingBy(rule, values);
  const seenAs = (role: PartyRole) => onceOfEach((subject: Subject) => plainView(rule, role, subject));
  const [fromOf, toOf] = [seenAs("from"), seenAs("to")];
  return (from, to) => {
    if (!isAskedOf(rule, [from, to])) return [];
    const seen = { from: fromOf(from), to: toOf(to), thresholds };
    const sides = [from, to];
    return toldOf(
      rule,
      sides,
      answerOf(rule, () => rule.judge(seen as never), { sides }, adopted),
    );
  };
}

/** What an answer says; undefined where its rule may rule out and cannot tell, since a trait of some side is not known. */
export function toldOf(
  rule: Rule,
  sides: readonly Subject[],
  { standing, unknown }: WorldAnswer,
): readonly Standing[] | undefined {
  if (!unknown || !mayRuleOut(rule)) return standing;
  const used = [...(rule.uses?.from ?? []), ...(rule.uses?.to ?? [])];
  return sides.every((side) => isKnownBy(side, used)) ? standing : undefined;
}
