import { ownRule } from "../../engine/rule/own-rule";

/** Given with every plan. */
export const cautionZoonoses = /* @__PURE__ */ ownRule({
  id: "caution-zoonoses",
  question: "Can the animals or their water make a person ill?",
  way: "once",
  mayYield: ["advisory"],
  judge: () => [{ weight: "advisory" }],
});
