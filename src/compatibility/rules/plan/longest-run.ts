import { decimal } from "../../../decimal";
import { runNeeded } from "../../animals/room";
import { wantedBy, wantedKin } from "../../animals/wanted";
import { ownRule } from "../../engine/rule/own-rule";
import { isNearlyEnough } from "../shared/nearly-enough";

/**
 * Is the tank long enough for the group to swim?
 *
 * A tank far too short for grown animals is refused: no furnishing helps. One that is hardly too short is worth knowing.
 */
export const longestRun = /* @__PURE__ */ ownRule({
  id: "longest-run",
  way: "each-group",
  needs: { from: ["space.baseLength"] },
  uses: { from: wantedBy },
  mayAdd: wantedBy,
  reads: ["tank.longestRun"],
  decidesBy: ["farTooSmall", "nearlyLong"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures: { needed: "cm", planned: "cm" },
  judge: ({ from, plan, thresholds }) => {
    const needed = runNeeded(from["space.baseLength"], wantedKin(from).count);
    const planned = plan["tank.longestRun"];
    const measures = { needed, planned };
    if (planned < decimal(thresholds.farTooSmall * needed)) return [{ weight: "blocking", measures }];
    if (isNearlyEnough(planned, needed, thresholds.nearlyLong)) return [{ weight: "advisory", measures }];
    return [
      { weight: "restricting", measures, condition: { on: "tank.longestRun", wanted: { min: needed } } },
    ];
  },
});
