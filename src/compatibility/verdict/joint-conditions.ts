import { decimal } from "../../decimal";
import { gathered } from "../../gathered";
import { jointCondition } from "../../plan/inner";
import { overlap, type PartialRange } from "../../ranges";
import { statedOf } from "../../ranges/inner";
import { aimedAt } from "../engine/answers/aimed-at";
import type { AimedCondition, AnyFinding } from "../engine/rule/finding";
import type { JointCondition } from "./verdict";

/** A condition that is being joined, with the findings that ask for it so far. */
interface Joining {
  condition: AimedCondition;
  readonly findings: number[];
}

/**
 * The conditions of all findings; of those about one fact and party that can be met together one that meets all, with
 * what to aim at: what all that are kept in it share, else the middle of what is wanted.
 */
export function jointConditions(findings: readonly AnyFinding[]): readonly JointCondition[] {
  const joint: Joining[] = [];
  const byFact = new Map<string, Joining[]>();
  for (const [index, finding] of findings.entries()) {
    if (finding.weight !== "restricting") continue;
    const { condition } = finding;
    const fact = `${condition.on} ${condition.of}`;
    const known = byFact.get(fact) ?? [];
    if (joined(known, condition, index)) continue;
    const further = { condition, findings: [index] };
    joint.push(further);
    byFact.set(fact, [...known, further]);
  }
  return joint.map(({ condition, findings: asking }) => ({ ...aimed(condition), findings: asking }));
}

/** Whether one of the conditions about a fact could be joined with another. */
function joined(known: readonly Joining[], condition: AimedCondition, index: number): boolean {
  for (const joining of known) {
    const both = jointCondition(joining.condition, condition);
    if (!both) continue;
    const aim = sharedAim(joining.condition.aim, condition.aim);
    joining.condition = { ...both, ...(aim && { aim }) };
    joining.findings.push(index);
    return true;
  }
  return false;
}

/** What two aims share; where they share nothing, an aim at nothing, which the middle of what is wanted replaces. */
function sharedAim(a: PartialRange | undefined, b: PartialRange | undefined): PartialRange | undefined {
  if (!a || !b) return a ?? b;
  if (Object.keys(a).length === 0) return a;
  return overlap(a, b) ?? {};
}

/** A condition with an aim within what is wanted, if it has one. */
function aimed(condition: AimedCondition): AimedCondition {
  const { wanted, aim } = condition;
  if (!aim || "oneOf" in wanted) return aimedAt(condition, undefined);
  const { min, max } = wanted;
  const shared = Object.keys(aim).length > 0 ? overlap(aim, statedOf(wanted)) : undefined;
  if (shared) return aimedAt(condition, shared);
  if (min === undefined || max === undefined) return aimedAt(condition, undefined);
  const middle = decimal((min + max) / 2);
  return aimedAt(condition, { min: middle, max: middle });
}

/** Of the joint conditions those that some of the findings ask for, and not only what is met. */
export const askedBy = (conditions: readonly JointCondition[], findings: number): readonly JointCondition[] =>
  gathered(conditions, (condition) => {
    const asking = condition.findings.filter((index) => index < findings);
    return asking.length > 0 ? [{ ...condition, findings: asking }] : [];
  });
