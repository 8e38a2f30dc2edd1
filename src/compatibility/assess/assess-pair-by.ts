import { refusal } from "../../errors";
import { remembered } from "../../made-once";
import type { Party } from "../../plan";
import { checkedPair } from "../../plan/inner";
import type { Judgement } from "../engine/answers/judgement";
import { pairJudge } from "../engine/judge-pair";
import { type AssessWith, isPairRule, type PairRule, type Rule } from "../engine/rule/rule";
import { subjectOf } from "../engine/sides/subject";
import { saidBy } from "../verdict/said";
import { takenTogether } from "../verdict/taken-together";
import type { Verdict } from "../verdict/verdict";
import { verdictOf } from "../verdict/verdict-of";
import { assessWith, type ThresholdOptions } from "./assess-options";

/**
 * As `assessPair`, by the rules that are named: a bundle holds those alone. What no rule looks at is not judged, so
 * `suitable` says no more than that these rules have nothing against it.
 *
 * @param rules - Rules of `vivary/compatibility/rules` or of an app; those that are not about pairs are left out.
 * @throws InvalidInputError for what `assessPair` refuses.
 *
 * @example
 * ```ts
 * import carassiusAuratus from "vivary/catalog/carassius-auratus";
 * import symphysodon from "vivary/catalog/symphysodon-aequifasciatus";
 * import { assessPairBy } from "vivary/compatibility";
 * import { temperature } from "vivary/compatibility/rules";
 *
 * assessPairBy([temperature], { species: carassiusAuratus }, { species: symphysodon }).outcome; // => "unsuitable"
 * ```
 */
export function assessPairBy(
  rules: readonly Rule[],
  a: Party,
  b: Party,
  options: ThresholdOptions = {},
): Verdict {
  const by = pairRulesOf(rules, options);
  const [one, other] = checkedPair(a, b);
  const [first, second] = [subjectOf(one, 0), subjectOf(other, 1)];
  const [there, back] = [
    [first, second],
    [second, first],
  ] as const;
  const several = [first, second].filter(({ animals: { count = 1 } }) => count > 1);
  const judgements: Judgement[] = [];
  for (const rule of by.rules) {
    const judge = pairJudge(rule, by.thresholds);
    judgements.push(judge(there));
    if (rule.way !== "each-way") continue;
    judgements.push(judge(back), ...several.map((one) => judge([one, one])));
  }
  const subjects = [first, second];
  const said = [saidBy(judgements)];
  return verdictOf(subjects, said, takenTogether(subjects, said, by), by);
}

/** What to judge pairs with, or an {@link InvalidInputError} where none of the rules is about pairs. */
export function pairRulesOf(rules: readonly Rule[], options: ThresholdOptions): AssessWith<PairRule> {
  const { thresholds } = assessWith(rules, options);
  const ofPairs = pairRulesAmong(rules);
  if (ofPairs.length === 0) throw refusal("rules", "at least one rule about pairs", rules.length, "range");
  return { rules: ofPairs, thresholds };
}

const pairRulesAmong = /* @__PURE__ */ remembered((rules: readonly Rule[]) => rules.filter(isPairRule));
