import { onceOfEach } from "../../made-once";
import type { ThresholdValues } from "../threshold-values";
import type { Standing } from "./answers/standing";
import { answerOf } from "./answers/world-answer";
import { decidingBy } from "./rule/deciding";
import type { PartyRole } from "./rule/finding";
import type { PairRule } from "./rule/rule";
import { isAskedOf } from "./sides/is-asked-of";
import { adopted, plainView } from "./sides/plain-view";
import type { Subject } from "./sides/subject";

/**
 * What a rule answers of pairs on the adopted values alone. It sees each of them as often as it likes at the price of once:
 * for many pairs of the same subjects.
 */
export function adoptedAnswers(
  rule: PairRule,
  values: ThresholdValues,
): (from: Subject, to: Subject) => readonly Standing[] {
  const { thresholds } = decidingBy(rule, values);
  const seenAs = (role: PartyRole) => onceOfEach((subject: Subject) => plainView(rule, role, subject));
  const [fromOf, toOf] = [seenAs("from"), seenAs("to")];
  return (from, to) => {
    if (!isAskedOf(rule, [from, to])) return [];
    const seen = { from: fromOf(from), to: toOf(to), thresholds };
    return answerOf(rule, () => rule.judge(seen as never), { sides: [from, to] }, adopted).standing;
  };
}
