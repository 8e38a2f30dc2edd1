import { gathered } from "../../gathered";
import { clashes, excludeEachOther } from "./clashes";
import type { JointCondition } from "./verdict";

/** Conditions of a verdict, each with the places of those that no plan meets along with it. */
export function withExcludes(conditions: readonly JointCondition[]): readonly JointCondition[] {
  if (clashes(conditions.map((condition) => ({ condition }))).length === 0) return conditions;
  return conditions.map((condition) => {
    const excludes = gathered([...conditions.entries()], ([place, other]) =>
      excludeEachOther(condition, other) ? [place] : [],
    );
    return excludes.length > 0 ? { ...condition, excludes } : condition;
  });
}
