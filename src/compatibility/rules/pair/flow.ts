import { currents, currentsBetween, currentsFrom, currentsUpTo } from "../../../species/inner";
import { ownRule } from "../../engine/rule/own-rule";

/** A tank has places: without a shared current, each needs one of its own. */
export const flow = /* @__PURE__ */ ownRule({
  id: "flow",
  question: "Is there a current in which both are at ease?",
  way: "mutual",
  needs: { from: ["water.flow"], to: ["water.flow"] },
  mayYield: ["restricting", "favourable"],
  measures: { calmest: "flow", strongest: "flow" },
  judge: ({ from, to }) => {
    const [a, b] = [from["water.flow"], to["water.flow"]];
    const others = currentsBetween(b.min, b.max);
    const shared = currentsBetween(a.min, a.max).filter((current) => others.includes(current));
    if (shared.length > 0) {
      return [{ weight: "favourable", measures: { calmest: shared[0], strongest: shared.at(-1) } }];
    }
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
