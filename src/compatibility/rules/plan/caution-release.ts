import { defineRule } from "../../engine/rule/define-rule";

/** Given with every plan. */
export const cautionRelease = /* @__PURE__ */ defineRule({
  id: "caution-release",
  question: "What becomes of animals, plants and water that can no longer be kept?",
  way: "once",
  mayYield: ["advisory"],
  judge: () => [{ weight: "advisory" }],
});
