import { onceOfEach } from "../../later";
import type { ThresholdValues } from "../threshold-values";
import { answerOf } from "./judge";
import { adopted, plainView } from "./plain-view";
import type { PartyRole } from "./rule/finding";
import type { PairRule } from "./rule/rule";
import { decidingBy } from "./seen";
import type { Standing } from "./standing";
import type { Subject } from "./subject";

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
    const seen = { from: fromOf(from), to: toOf(to), thresholds };
    return answerOf(rule, () => rule.judge(seen as never), { sides: [from, to] }, adopted).standing;
  };
}
