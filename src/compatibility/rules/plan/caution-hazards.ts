import { defineRule } from "../../engine/rule/define-rule";

export const cautionHazards = defineRule({
  id: "caution-hazards",
  question: "Can it hurt a person?",
  way: "each-group",
  needs: { from: ["care.hazards"] },
  mayYield: ["advisory"],
  measures: { hazard: "hazard" },
  judge: ({ from }) => from["care.hazards"].map((hazard) => ({ weight: "advisory", measures: { hazard } })),
});
