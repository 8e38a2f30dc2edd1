import { decimal } from "../../decimal";
import { gathered } from "../../gathered";
import { jointCondition } from "../../plan/inner";
import { overlap, type PartialRange } from "../../ranges";
import { statedOf } from "../../ranges/inner";
import { aimedAt } from "../engine/answers/aimed-at";
import type { AimedCondition, AnyFinding } from "../engine/rule/finding";
import type { JointCondition } from "./verdict";

/** A condition, with the finding that asks for it. */
interface Asked {
  readonly condition: AimedCondition;
  readonly finding: number;
}

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
  const byFact = new Map<string, Asked[]>();
  for (const [index, finding] of findings.entries()) {
    if (finding.weight !== "restricting") continue;
    const { condition } = finding;
    const fact = `${condition.on} ${condition.of}`;
    const known = byFact.get(fact);
    if (known) known.push({ condition, finding: index });
    else byFact.set(fact, [{ condition, finding: index }]);
  }
  return [...gathered([...byFact.values()], joined)]
    .sort((one, other) => firstOf(one) - firstOf(other))
    .map(({ condition, findings: asking }) => ({ ...aimed(condition), findings: asking }));
}

const firstOf = ({ findings: [first = 0] }: Joining): number => first;

/** What is asked about one fact, joined; where not all can be met together, in an order that hangs on no plan's. */
function joined(asked: readonly Asked[]): readonly Joining[] {
  const inTurn = joinedInTurn(asked);
  if (inTurn.length === 1) return inTurn;
  const joint = joinedInTurn([...asked].sort(byWanted));
  for (const { findings } of joint) findings.sort((one, other) => one - other);
  return joint;
}

/** Joins what is asked about one fact, one after the other: each with the first that can be met along with it. */
function joinedInTurn(asked: readonly Asked[]): readonly Joining[] {
  const joint: Joining[] = [];
  for (const { condition, finding } of asked) {
    if (!joinsAny(joint, condition, finding)) joint.push({ condition, findings: [finding] });
  }
  return joint;
}

/** By the most that is wanted, then by all that is: so of spans that exclude each other the fewest are left. */
function byWanted({ condition: { wanted: a } }: Asked, { condition: { wanted: b } }: Asked): number {
  const most = (wanted: AimedCondition["wanted"]) => ("oneOf" in wanted ? 0 : (wanted.max ?? Infinity));
  const [one, other] = [most(a), most(b)];
  if (one !== other) return one - other;
  const [first, second] = [JSON.stringify(a), JSON.stringify(b)];
  return first < second ? -1 : Number(first > second);
}

/** Whether one of the conditions about a fact could be joined with another. */
function joinsAny(known: readonly Joining[], condition: AimedCondition, finding: number): boolean {
  for (const joining of known) {
    const both = jointCondition(joining.condition, condition);
    if (!both) continue;
    const aim = sharedAim(joining.condition.aim, condition.aim);
    joining.condition = { ...both, ...(aim && { aim }) };
    joining.findings.push(finding);
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
