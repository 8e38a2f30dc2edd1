import { defineRule } from "../../rule";

export const cautionHazards = defineRule({
  id: "caution-hazards",
  question: "Can it hurt a person?",
  way: "each-group",
  needs: { from: ["care.hazards"] },
  mayYield: ["advisory"],
  judge: ({ from }) =>
    from["care.hazards"].map((hazard) => ({ weight: "advisory", measures: { hazard: { value: hazard } } })),
});
