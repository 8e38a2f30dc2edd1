import { ordinalOverlap } from "../../../ranges";
import { currents } from "../../assessed-plan";
import type { Judged } from "../../finding";
import { defineRule } from "../../rule";

/** A tank has places: without a shared current, each needs one of its own. */
export const flow = defineRule({
  id: "flow",
  question: "Is there a current in which both are at ease?",
  way: "mutual",
  needs: { from: ["water.flow"], to: ["water.flow"] },
  mayYield: ["restricting", "favourable"],
  judge: ({ from, to }): readonly Judged<"restricting" | "favourable">[] => {
    const [a, b] = [from["water.flow"], to["water.flow"]];
    const shared = ordinalOverlap(currents, a, b);
    if (shared)
      return [
        {
          weight: "favourable",
          measures: { calmest: { value: shared.min }, strongest: { value: shared.max } },
        },
      ];
    const calm = currents.indexOf(a.max) < currents.indexOf(b.max) ? a.max : b.max;
    const strong = currents.indexOf(a.min) > currents.indexOf(b.min) ? a.min : b.min;
    const measures = { calmest: { value: calm }, strongest: { value: strong } };
    return [
      {
        weight: "restricting",
        measures,
        condition: { on: "tank.flow.calmest", is: currents.slice(0, currents.indexOf(calm) + 1) },
      },
      {
        weight: "restricting",
        measures,
        condition: { on: "tank.flow.strongest", is: currents.slice(currents.indexOf(strong)) },
      },
    ];
  },
});
