import type { ThresholdValues } from "../threshold-values";
import { answerOf } from "./judge";
import { adopted, plainView } from "./plain-view";
import type { PartyRole } from "./rule/finding";
import type { PairRule } from "./rule/rule";
import { decidingBy } from "./seen";
import type { Standing } from "./standing";
import type { Subject } from "./subject";
import type { View } from "./view";

/**
 * What a rule answers of pairs on the adopted values alone. It sees each of them as often as it likes at the price of once:
 * for many pairs of the same subjects.
 */
export function adoptedAnswers(
  rule: PairRule,
  values: ThresholdValues,
): (from: Subject, to: Subject) => readonly Standing[] {
  const { thresholds } = decidingBy(rule, values);
  const [fromOf, toOf] = [seenAs(rule, "from"), seenAs(rule, "to")];
  return (from, to) => {
    const seen = { from: fromOf(from), to: toOf(to), thresholds };
    return answerOf(rule, () => rule.judge(seen as never), { sides: [from, to] }, adopted).standing;
  };
}

/** Subjects as a rule sees them on one side, each made out once. */
function seenAs(rule: PairRule, role: PartyRole): (subject: Subject) => View {
  const views = new Map<Subject, View>();
  return (subject) => {
    const known = views.get(subject);
    if (known) return known;
    const view = plainView(rule, role, subject);
    views.set(subject, view);
    return view;
  };
}
