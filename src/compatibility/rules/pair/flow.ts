import { between, currents, from as noCalmerThan, upTo } from "../../currents";
import type { Judged } from "../../finding";
import { defineRule } from "../../rule";
import { easyCurrents } from "../shared/easy-currents";

/** A tank has places: without a shared current, each needs one of its own. */
export const flow = defineRule({
  id: "flow",
  question: "Is there a current in which both are at ease?",
  way: "mutual",
  needs: { from: ["water.flow"], to: ["water.flow"] },
  uses: { from: ["appearance.longFins"], to: ["appearance.longFins"] },
  mayYield: ["restricting", "favourable"],
  judge: ({ from, to }): readonly Judged<"restricting" | "favourable">[] => {
    const [a, b] = [easyCurrents(from), easyCurrents(to)];
    const others = between(b.min, b.max);
    const shared = between(a.min, a.max).filter((current) => others.includes(current));
    if (shared.length > 0) return [{ weight: "favourable", measures: ends(shared) }];
    const calmer = currents.indexOf(a.max) < currents.indexOf(b.max) ? a : b;
    const stronger = calmer === a ? b : a;
    const measures = { calmest: { value: calmer.max }, strongest: { value: stronger.min } };
    return [
      { weight: "restricting", measures, condition: { on: "tank.flow.calmest", is: upTo(calmer.max) } },
      {
        weight: "restricting",
        measures,
        condition: { on: "tank.flow.strongest", is: noCalmerThan(stronger.min) },
      },
    ];
  },
});

function ends(shared: readonly string[]) {
  return { calmest: { value: shared[0] ?? "" }, strongest: { value: shared.at(-1) ?? "" } };
}
