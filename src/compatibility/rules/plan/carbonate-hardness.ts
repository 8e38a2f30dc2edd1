import { contains } from "../../../ranges";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * Carbonate hardness harms by the pH that it holds up or lets fall, which is judged by itself: outside what an animal is
 * kept in, it is worth knowing.
 */
export const carbonateHardness = /* @__PURE__ */ ownRule({
  id: "carbonate-hardness",
  question: "Is the water's carbonate hardness what the group is kept in?",
  way: "each-group",
  uses: { from: ["water.carbonateHardness"] },
  reads: ["water.carbonateHardness"],
  mayYield: ["advisory"],
  measures: { kept: "dH", planned: "dH" },
  judge: ({ from, plan }) => {
    const kept = from["water.carbonateHardness"]?.kept;
    const planned = plan["water.carbonateHardness"];
    if (!kept || planned === undefined || contains(kept, planned)) return [];
    return [{ weight: "advisory", measures: { kept, planned } }];
  },
});
