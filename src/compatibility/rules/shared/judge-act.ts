import type { Animals } from "../../../plan";
import type { Act } from "../../../species";
import { notYet, ofBrood } from "../../animals/acts";
import type { GivenCondition, Judged } from "../../engine/rule/finding";
import type { MeasureKinds } from "../../engine/rule/measures";

/** The measures of a finding about an act. `once` is the stage at which it begins, where that is still to come. */
export const actMeasures = {
  act: "does",
  when: "when",
  doer: "sex",
  once: "stage",
} as const satisfies MeasureKinds;

type ActAnswer = Judged<"blocking" | "restricting" | "advisory", typeof actMeasures>;

/**
 * What an act that can happen weighs: killing blocks, and so does biting anyone at any time; other bites and chases
 * restrict to the condition that removes them; what is left is worth knowing. Young grow up, so what they do not do yet
 * counts too.
 */
export function judgeAct(
  act: Act,
  animals: Animals,
  removedBy: GivenCondition,
  { coverAgainstChase }: { readonly coverAgainstChase: number },
): ActAnswer {
  const { does, target, when = "always", doer } = act;
  const measures = { act: does, when, doer, once: notYet(act, animals) ? ("adult" as const) : undefined };
  const deadly = does === "kills" || (does === "bites" && target === "any" && when === "always");
  if (deadly) return { weight: "blocking", measures, watchFor: "missing animals" };
  const hurts = does === "bites" || does === "chases";
  if (!hurts || when === "feeding") return { weight: "advisory", measures };
  const cover = { on: "tank.cover", wanted: { min: coverAgainstChase } } as const;
  return {
    weight: "restricting",
    measures,
    condition: needsCover(act) ? cover : removedBy,
    watchFor: "chasing",
  };
}

/** Whoever is only chased from a brood, or attacked where it cannot get away, needs cover to get out of sight. */
const needsCover = ({ does, when }: Act) => when === "crowded" || (ofBrood(when) && does === "chases");
