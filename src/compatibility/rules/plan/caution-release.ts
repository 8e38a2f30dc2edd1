import { ownRule } from "../../engine/rule/own-rule";

/**
 * What becomes of animals, plants and water that can no longer be kept?
 *
 * Given with every plan.
 */
export const cautionRelease = /* @__PURE__ */ ownRule({
  id: "caution-release",
  way: "once",
  mayYield: ["advisory"],
  judge: () => [{ weight: "advisory" }],
});
