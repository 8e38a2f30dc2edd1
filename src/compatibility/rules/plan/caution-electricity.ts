import { defineRule } from "../../engine/rule/define-rule";

/** Given with every plan. */
export const cautionElectricity = /* @__PURE__ */ defineRule({
  id: "caution-electricity",
  question: "Do electrical devices stand in or above the water?",
  way: "once",
  mayYield: ["advisory"],
  judge: () => [{ weight: "advisory" }],
});
