import { between, currents, from as noCalmerThan, upTo } from "../../currents";
import type { Judged } from "../../finding";
import type { FactName } from "../../plan-facts";
import { defineRule } from "../../rule";
import { easyCurrents } from "../shared/easy-currents";

export const flowPlaces = defineRule({
  id: "flow-places",
  question: "Is there a place with a current in which it is at ease?",
  way: "each-group",
  needs: { from: ["water.flow"] },
  uses: { from: ["appearance.longFins"] },
  mayYield: ["restricting"],
  judge: ({ from }) => {
    const { min, max } = easyCurrents(from);
    const span = between(min, max);
    const measures = { calmest: { value: span[0] ?? min }, strongest: { value: span.at(-1) ?? max } };
    return [
      ...needs("tank.flow.calmest", upTo(max), measures),
      ...needs("tank.flow.strongest", noCalmerThan(min), measures),
    ];
  },
});

/** A need that not every tank meets. */
function needs(
  on: FactName,
  is: readonly string[],
  measures: Judged["measures"],
): readonly Judged<"restricting">[] {
  if (is.length === currents.length) return [];
  return [
    { weight: "restricting", ...(measures && { measures }), watchFor: "hiding", condition: { on, is } },
  ];
}
