import { ownRule } from "../../engine/rule/own-rule";

/**
 * Do electrical devices stand in or above the water?
 *
 * Given with every plan.
 */
export const cautionElectricity = /* @__PURE__ */ ownRule({
  id: "caution-electricity",
  way: "once",
  mayYield: ["advisory"],
  judge: () => [{ weight: "advisory" }],
});
