import { isMet, type Plan } from "../../plan";
import { checkedPlan } from "../../plan/inner";
import type { AimedCondition, AnyFinding } from "../engine/rule/finding";
import { jointConditions } from "../verdict/joint-conditions";
import type { JointCondition } from "../verdict/verdict";
import type { AssessOptions } from "./assess-options";
import { assessPlanWith } from "./assess-plan";
import { judgedPlan } from "./judged-plan";

/**
 * What a plan does not meet of all that its animals ask for, or would ask for if what is disputed were otherwise: joined
 * where it can be met together.
 *
 * @throws InvalidInputError for what `assessPlan` refuses.
 */
export function askedAtWorst(plan: Plan, options: AssessOptions): readonly JointCondition[] {
  const by = assessPlanWith(options);
  const judgements = judgedPlan(checkedPlan(plan), by).said.flatMap((said) => said.judgements);
  const asked = judgements.flatMap(({ worlds }) => worlds.flatMap(({ asks }) => asks));
  return jointConditions(asked.map(asFinding)).filter((condition) => isMet(condition, plan) !== true);
}

const asFinding = (condition: AimedCondition): AnyFinding => ({
  rule: "",
  weight: "restricting",
  basis: "common-practice",
  traits: [],
  condition,
});
