import { defineRule } from "../../engine/rule/define-rule";
import { judgeSharedWater, sharedWaterMeasures } from "../shared/shared-water";

/** A gap never blocks: no source shows harm to adults from hardness alone. */
export const generalHardness = defineRule({
  id: "general-hardness",
  question: "Is there a hardness at which both are kept?",
  way: "mutual",
  needs: { from: ["water.generalHardness"], to: ["water.generalHardness"] },
  decidesBy: ["sharedHardness"],
  mayYield: ["blocking", "restricting", "favourable"],
  measures: sharedWaterMeasures("dH"),
  judge: ({ from, to, thresholds }) =>
    judgeSharedWater(from["water.generalHardness"], to["water.generalHardness"], "water.generalHardness", {
      shared: thresholds.sharedHardness,
      bridged: () => true,
    }),
});
