import type { PartialRange } from "../../../ranges";
import { ownRule } from "../../engine/rule/own-rule";
import type { PlanSeen, SeenParty } from "../../engine/rule/rule";

type Kept = SeenParty<never, "water.pH" | "water.generalHardness">;
type Water = PlanSeen<"water.pH" | "water.generalHardness">["plan"];

/**
 * What harms it sooner than its tank mates?
 *
 * Tells what harms it sooner than its tank mates, so that no remedy does; soft, acid water unless the plan's is known to be
 * neither.
 */
export const sensitive = /* @__PURE__ */ ownRule({
  id: "sensitive",
  way: "each-group",
  needs: { from: ["care.sensitive"] },
  uses: { from: ["water.pH", "water.generalHardness"] },
  reads: ["water.pH", "water.generalHardness"],
  mayYield: ["advisory"],
  measures: { to: "sensitivity" },
  judge: ({ from, plan }) =>
    from["care.sensitive"]
      .filter((sensitivity) => sensitivity !== "soft-water" || !isNeitherSoftNorAcid(from, plan))
      .map((sensitivity) => ({ weight: "advisory", measures: { to: sensitivity } })),
});

/** Whether water is neither softer nor more acid than an animal is kept in. */
function isNeitherSoftNorAcid(
  { "water.pH": pH, "water.generalHardness": hardness }: Kept,
  plan: Water,
): boolean {
  const reaches = (planned: number | undefined, kept: PartialRange | undefined) =>
    planned !== undefined && kept?.min !== undefined && planned >= kept.min;
  return reaches(plan["water.pH"], pH?.kept) && reaches(plan["water.generalHardness"], hardness?.kept);
}
