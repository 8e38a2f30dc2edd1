import { ownRule } from "../../engine/rule/own-rule";

/** Given with every plan. */
export const cautionElectricity = /* @__PURE__ */ ownRule({
  id: "caution-electricity",
  question: "Do electrical devices stand in or above the water?",
  way: "once",
  mayYield: ["advisory"],
  judge: () => [{ weight: "advisory" }],
});
