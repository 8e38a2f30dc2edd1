import { overlap } from "../../../ranges";
import { defineRule } from "../../engine/rule/define-rule";
import { sharedWaterMeasures } from "../shared/water";

/** Salinity gives way by nothing: any share is room enough, and nothing bridges fresh and brackish water. */
export const salinity = defineRule({
  id: "salinity",
  question: "Is there a salinity at which both can be kept?",
  way: "mutual",
  needs: { from: ["water.salinity"], to: ["water.salinity"] },
  mayYield: ["blocking", "advisory", "favourable"],
  measures: sharedWaterMeasures("g/kg"),
  judge: ({ from, to }) => {
    const [a, b] = [from["water.salinity"], to["water.salinity"]];
    const shared = overlap(a.kept, b.kept);
    if (shared) return [{ weight: "favourable", measures: { shared } }];
    const measures = { from: a.kept, to: b.kept };
    return a.standIn || b.standIn
      ? [{ weight: "advisory", couldBe: "blocking", measures }]
      : [{ weight: "blocking", measures }];
  },
});
