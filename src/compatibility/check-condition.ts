import { refusal } from "../errors";
import { contains } from "../ranges";
import type { AssessedPlan } from "./assessed-plan";
import type { Condition } from "./finding";
import { factOf } from "./plan-facts";

/** Whether a plan meets a condition, or does not say. */
export function checkCondition(condition: Condition, plan: AssessedPlan): "met" | "unmet" | "not-given" {
  const value = factOf(plan, condition.on, condition.of);
  if (value === undefined) return "not-given";
  return holds(condition, value) ? "met" : "unmet";
}

function holds(condition: Condition, value: Exclude<ReturnType<typeof factOf>, undefined>): boolean {
  if ("within" in condition) return typeof value === "number" && contains(condition.within, value);
  if ("is" in condition) {
    const found = [value].flat();
    return [condition.is].flat().some((accepted) => found.includes(accepted));
  }
  throw refusal("condition", "a range within which, or a value that, the fact is", condition);
}
