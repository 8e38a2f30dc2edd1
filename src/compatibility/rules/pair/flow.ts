import { ordinalOverlap } from "../../../ranges";
import { currents, currentsFrom, currentsUpTo } from "../../../species/inner";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * Is there a current in which both are at ease?
 *
 * A tank has places: without a shared current, each needs one of its own.
 */
export const flow = /* @__PURE__ */ ownRule({
  id: "flow",
  way: "mutual",
  needs: { from: ["water.flow"], to: ["water.flow"] },
  mayYield: ["restricting", "favourable"],
  measures: { calmest: "flow", strongest: "flow" },
  judge: ({ from, to }) => {
    const [a, b] = [from["water.flow"], to["water.flow"]];
    const shared = ordinalOverlap(currents, a, b);
    if (shared) return [{ weight: "favourable", measures: { calmest: shared.min, strongest: shared.max } }];
    const calmer = currents.indexOf(a.max) < currents.indexOf(b.max) ? a : b;
    const stronger = calmer === a ? b : a;
    const measures = { calmest: calmer.max, strongest: stronger.min };
    return [
      {
        weight: "restricting",
        measures,
        condition: { on: "tank.flow.calmest", wanted: { oneOf: currentsUpTo(calmer.max) } },
      },
      {
        weight: "restricting",
        measures,
        condition: { on: "tank.flow.strongest", wanted: { oneOf: currentsFrom(stronger.min) } },
      },
    ];
  },
});
