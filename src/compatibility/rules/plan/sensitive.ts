import { ownRule } from "../../engine/rule/own-rule";

/**
 * What harms it sooner than its tank mates?
 *
 * Tells what harms it sooner than its tank mates, so that no remedy does.
 */
export const sensitive = /* @__PURE__ */ ownRule({
  id: "sensitive",
  way: "each-group",
  needs: { from: ["care.sensitive"] },
  mayYield: ["advisory"],
  measures: { to: "sensitivity" },
  judge: ({ from }) =>
    from["care.sensitive"].map((sensitivity) => ({ weight: "advisory", measures: { to: sensitivity } })),
});
