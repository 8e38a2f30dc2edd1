import { grownLength } from "../../animals/lengths";
import { ownRule } from "../../engine/rule/own-rule";

/**
 * Can a heater or a pump hurt it?
 *
 * Large animals that rest on the ground burn themselves on heaters; small, climbing and weak ones get into pumps.
 */
export const cautionDevices = /* @__PURE__ */ ownRule({
  id: "caution-devices",
  way: "each-group",
  needs: { from: ["size.adultLength", "space.zones"] },
  decidesBy: ["restsOnHeaters"],
  mayYield: ["advisory"],
  measures: { device: "text" },
  judge: ({ from, thresholds }) => {
    const { kind } = from.party;
    if (kind !== "fish") return [{ weight: "advisory", measures: { device: "pump" } }];
    const rests = from["space.zones"].every((zone) => zone === "bottom");
    const large = grownLength(from.party, from["size.adultLength"]) >= thresholds.restsOnHeaters;
    return rests && large ? [{ weight: "advisory", measures: { device: "heater" } }] : [];
  },
});
