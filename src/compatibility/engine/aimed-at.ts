import type { AimedCondition } from "./rule/finding";

/** A condition, its party and its aim left out where it has none. */
export function aimedAt({ on, of, wanted, aim }: AimedCondition): AimedCondition {
  if (of === undefined) return aim === undefined ? { on, wanted } : { on, wanted, aim };
  return aim === undefined ? { on, of, wanted } : { on, of, wanted, aim };
}
