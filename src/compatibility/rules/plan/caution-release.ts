import { ownRule } from "../../engine/rule/own-rule";

/** Given with every plan. */
export const cautionRelease = /* @__PURE__ */ ownRule({
  id: "caution-release",
  question: "What becomes of animals, plants and water that can no longer be kept?",
  way: "once",
  mayYield: ["advisory"],
  judge: () => [{ weight: "advisory" }],
});
