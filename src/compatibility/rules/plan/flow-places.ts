import { currents } from "../../assessed-plan";
import { defineRule } from "../../rule";

export const flowPlaces = defineRule({
  id: "flow-places",
  question: "Is there a place with a current in which it is at ease?",
  way: "each-group",
  needs: { from: ["water.flow"] },
  mayYield: ["restricting"],
  judge: ({ from }) => {
    const { min, max } = from["water.flow"];
    const measures = { calmest: { value: min }, strongest: { value: max } };
    const noStronger = currents.slice(0, currents.indexOf(max) + 1);
    const noCalmer = currents.slice(currents.indexOf(min));
    return [
      {
        weight: "restricting",
        measures,
        watchFor: "hiding",
        condition: { on: "tank.flow.calmest", is: noStronger },
      },
      { weight: "restricting", measures, condition: { on: "tank.flow.strongest", is: noCalmer } },
    ];
  },
});
