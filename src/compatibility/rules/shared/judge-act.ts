import type { Condition, Judged, SideName } from "../../finding";
import type { ThresholdValues } from "../../thresholds";
import type { Act } from "./acts";

type Answer = Judged<"blocking" | "restricting" | "advisory">;

/**
 * What an act that can happen weighs: killing blocks, and so does biting anyone at any time; other bites and chases
 * restrict to the condition that removes them; what is left is worth knowing.
 */
export function judgeAct(act: Act, removedBy: Condition<SideName>, thresholds: ThresholdValues): Answer {
  const { does, target, when = "always" } = act;
  const measures = { act: { value: does }, when: { value: when } };
  const deadly = does === "kills" || (does === "bites" && target === "any" && when === "always");
  if (deadly) return { weight: "blocking", measures, watchFor: "missing animals" };
  const hurts = does === "bites" || does === "chases";
  if (!hurts || when === "feeding") return { weight: "advisory", measures };
  const condition = ofBrood(act) ? withoutBrood(act, thresholds) : removedBy;
  return { weight: "restricting", measures, condition, watchFor: "chasing" };
}

const ofBrood = ({ when }: Act) => when === "breeding" || when === "guarding-brood";

/** Whoever is only chased away needs cover to get out of sight; against bites no pair may breed. */
function withoutBrood({ does }: Act, thresholds: ThresholdValues): Condition<SideName> {
  if (does === "chases") return { on: "tank.cover", within: { min: thresholds.coverAgainstChase } };
  return { on: "group.pairs", of: "from", within: { max: 0 } };
}
