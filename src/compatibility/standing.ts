import { objectOf } from "../errors";
import type { AssessedPlan } from "./assessed-plan";
import { checkCondition } from "./check-condition";
import { gravity, type Judged, type Weight } from "./finding";
import type { Side } from "./scenarios";

/** An answer with its condition about a party by index, and how it stands in a plan. */
export interface Standing {
  readonly answer: Judged<Weight, number>;
  readonly state: "met" | "unmet" | "not-given";
}

/** Without a plan every answer stands. */
export function standingOf(answer: Judged, sides: readonly Side[], plan: AssessedPlan | undefined): Standing {
  if (answer.weight !== "restricting") return { answer, state: "unmet" };
  const { of, ...named } = objectOf(answer.condition, "condition");
  const side = of && sides[of === "from" ? 0 : 1];
  const condition = side ? { ...named, of: side.subject.index } : named;
  const located = { condition };
  return { answer: { ...answer, ...located }, state: plan ? checkCondition(condition, plan) : "unmet" };
}

/** The gravity of a rule's answers if all that the plan does not say were met, and if none were. */
export function spanOf(standing: readonly Standing[]) {
  let [least, greatest] = [0, 0];
  for (const { answer, state } of standing) {
    if (state !== "met") greatest = Math.max(greatest, gravity[answer.weight]);
    if (state === "unmet") least = Math.max(least, gravity[answer.weight]);
  }
  return { least, greatest };
}
