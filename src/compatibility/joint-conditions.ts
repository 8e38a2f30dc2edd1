import type { Condition } from "../plan";
import { jointCondition } from "../plan/inner";
import type { AnyFinding } from "./engine/finding";
import type { JointCondition } from "./verdict";

/** The conditions of all findings; of those about one fact and party that can be met together one that meets all. */
export function jointConditions(findings: readonly AnyFinding[]): readonly JointCondition[] {
  const joint: JointCondition[] = [];
  for (const [index, finding] of findings.entries()) {
    if (finding.weight === "restricting") join(joint, finding.condition, index);
  }
  return joint;
}

function join(joint: JointCondition[], condition: Condition, index: number): void {
  for (const [at, known] of joint.entries()) {
    const both = jointCondition(known, condition);
    if (!both) continue;
    joint[at] = { ...both, findings: [...known.findings, index] };
    return;
  }
  joint.push({ ...condition, findings: [index] });
}
