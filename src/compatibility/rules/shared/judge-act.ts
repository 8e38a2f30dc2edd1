import type { Condition, Judged, SideName } from "../../finding";
import type { AssessedParty } from "../../party";
import type { ThresholdValues } from "../../thresholds";
import { type Act, notYet, ofBrood } from "./acts";

type Answer = Judged<"blocking" | "restricting" | "advisory">;

/**
 * What an act that can happen weighs: killing blocks, and so does biting anyone at any time; other bites and chases
 * restrict to the condition that removes them; what is left is worth knowing. Young grow up, so what they do not do yet
 * counts too.
 */
export function judgeAct(
  act: Act,
  doer: AssessedParty,
  removedBy: Condition<SideName>,
  thresholds: ThresholdValues,
): Answer {
  const { does, target, when = "always" } = act;
  const measures = {
    act: { value: does },
    when: { value: when },
    ...(act.doer && { doer: { value: act.doer } }),
    ...(notYet(act, doer) && { once: { value: "grown" } }),
  };
  const deadly = does === "kills" || (does === "bites" && target === "any" && when === "always");
  if (deadly) return { weight: "blocking", measures, watchFor: "missing animals" };
  const hurts = does === "bites" || does === "chases";
  if (!hurts || when === "feeding") return { weight: "advisory", measures };
  const condition = needsCover(act)
    ? ({ on: "tank.cover", within: { min: thresholds.coverAgainstChase } } as const)
    : removedBy;
  return { weight: "restricting", measures, condition, watchFor: "chasing" };
}

/** Whoever is only chased from a brood, or attacked where it cannot get away, needs cover to get out of sight. */
const needsCover = ({ does, when }: Act) => when === "crowded" || (ofBrood(when) && does === "chases");
