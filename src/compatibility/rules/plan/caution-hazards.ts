import { ownRule } from "../../engine/rule/own-rule";

/**
 * Can it hurt a person?
 *
 * Tells each way in which an animal can hurt a person, and of which family it is: their spines differ.
 */
export const cautionHazards = /* @__PURE__ */ ownRule({
  id: "caution-hazards",
  way: "each-group",
  needs: { from: ["care.hazards"] },
  mayYield: ["advisory"],
  measures: { hazard: "hazard", family: "text" },
  judge: ({ from }) =>
    from["care.hazards"].map((hazard) => ({
      weight: "advisory",
      measures: { hazard, family: from.party.family },
    })),
});
