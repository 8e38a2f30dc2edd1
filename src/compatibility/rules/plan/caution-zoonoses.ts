import { defineRule } from "../../engine/rule/define-rule";

/** Given with every plan. */
export const cautionZoonoses = /* @__PURE__ */ defineRule({
  id: "caution-zoonoses",
  question: "Can the animals or their water make a person ill?",
  way: "once",
  mayYield: ["advisory"],
  judge: () => [{ weight: "advisory" }],
});
