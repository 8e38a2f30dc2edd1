import { ownRule } from "../../engine/rule/own-rule";

/**
 * Can the animals or their water make a person ill?
 *
 * Given with every plan.
 */
export const cautionZoonoses = /* @__PURE__ */ ownRule({
  id: "caution-zoonoses",
  way: "once",
  mayYield: ["advisory"],
  judge: () => [{ weight: "advisory" }],
});
