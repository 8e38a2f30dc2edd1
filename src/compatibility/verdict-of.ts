import { version } from "../../package.json";
import { refusal } from "../errors";
import type { Judgement } from "./engine";
import { gravity } from "./finding";
import { verdictParty } from "./party";
import { rankQuestions } from "./rank-questions";
import type { Rule } from "./rule";
import type { Subject } from "./subject";
import type { ThresholdValues } from "./thresholds";
import type { Verdict } from "./verdict";

const outcomes = ["suitable", "conditional", "unsuitable"] as const;

/** Puts the judgements of all rules together. Without a rule there is no verdict. */
export function verdictOf(
  subjects: readonly Subject[],
  judgements: readonly Judgement[],
  rules: readonly Rule[],
  thresholds: ThresholdValues,
): Verdict {
  if (rules.length === 0) throw refusal("rules", "at least one rule that applies", rules);
  const findings = judgements.flatMap((judgement) => judgement.findings);
  const adopted = Math.max(0, ...findings.map(({ weight }) => gravity[weight]));
  const undetermined = adopted < gravity.blocking && judgements.some((judgement) => judgement.undetermined);
  const outcome = (grade: number) => outcomes[grade] ?? "unsuitable";
  return {
    outcome: undetermined ? "undetermined" : outcome(adopted),
    bounds: {
      atBest: outcome(Math.max(0, ...judgements.map(({ least }) => least))),
      atWorst: outcome(Math.max(0, ...judgements.map(({ greatest }) => greatest))),
    },
    parties: subjects.map(({ party }) => verdictParty(party)),
    findings,
    met: judgements.flatMap((judgement) => judgement.met),
    open: rankQuestions(judgements),
    made: { version, rules: rules.map(({ id }) => id), thresholds },
  };
}
