import type { Condition } from "../../../plan";
import type { PartialRange } from "../../../ranges";
import type { AimedCondition } from "../rule/finding";

/** A condition with its party and what to aim at, where it has them. */
export function aimedAt({ on, of, wanted }: Condition, aim: PartialRange | undefined): AimedCondition {
  if (of === undefined) return aim === undefined ? { on, wanted } : { on, wanted, aim };
  return aim === undefined ? { on, of, wanted } : { on, of, wanted, aim };
}
