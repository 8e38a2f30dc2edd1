import type { Condition } from "../plan";
import { jointCondition } from "../plan/inner";
import type { AnyFinding } from "./engine/rule/finding";
import type { JointCondition } from "./verdict";

/** A condition that is being joined, with the findings that ask for it so far. */
interface Joining {
  condition: Condition;
  readonly findings: number[];
}

/** The conditions of all findings; of those about one fact and party that can be met together one that meets all. */
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
  return joint.map(({ condition, findings: asking }) => ({ ...condition, findings: asking }));
}

/** Whether one of the conditions about a fact could be joined with another. */
function joined(known: readonly Joining[], condition: Condition, index: number): boolean {
  for (const joining of known) {
    const both = jointCondition(joining.condition, condition);
    if (!both) continue;
    joining.condition = both;
    joining.findings.push(index);
    return true;
  }
  return false;
}
