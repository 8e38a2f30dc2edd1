import type { Condition, Judged, SideName } from "../../finding";
import type { Act } from "./acts";

type Answer = Judged<"blocking" | "restricting" | "advisory">;

/**
 * What an act that can happen weighs: killing blocks, and so does biting anyone at any time; other bites and chases
 * restrict to the condition that removes them; what is left is worth knowing.
 */
export function judgeAct({ does, target, when = "always" }: Act, condition: Condition<SideName>): Answer {
  const measures = { act: { value: does }, when: { value: when } };
  const deadly = does === "kills" || (does === "bites" && target === "any" && when === "always");
  if (deadly) return { weight: "blocking", measures, watchFor: "missing animals" };
  const hurts = does === "bites" || does === "chases";
  if (hurts && when !== "feeding") return { weight: "restricting", measures, condition, watchFor: "chasing" };
  return { weight: "advisory", measures };
}
