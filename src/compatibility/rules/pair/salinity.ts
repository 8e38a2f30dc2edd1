import { overlap } from "../../../ranges";
import { ownRule } from "../../engine/rule/own-rule";
import { notShared, sharedWaterMeasures } from "../shared/water";

/**
 * Is there a salinity at which both can be kept?
 *
 * Salinity gives way by nothing: whatever is shared is room enough, and nothing bridges fresh and brackish water.
 */
export const salinity = /* @__PURE__ */ ownRule({
  id: "salinity",
  way: "mutual",
  needs: { from: ["water.salinity"], to: ["water.salinity"] },
  mayYield: ["blocking", "advisory", "favourable"],
  measures: /* @__PURE__ */ sharedWaterMeasures("g/kg"),
  judge: ({ from, to }) => {
    const [a, b] = [from["water.salinity"], to["water.salinity"]];
    const shared = overlap(a.kept, b.kept);
    return shared ? [{ weight: "favourable", measures: { shared } }] : [notShared(a, b)];
  },
});
