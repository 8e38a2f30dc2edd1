import { defineRule } from "../../engine/rule/define-rule";

export const settlingCompany = defineRule({
  id: "settling-company",
  question: "Does calm company in the open water bring it out of hiding?",
  way: "each-group",
  needs: { from: ["social.settledBy"] },
  mayYield: ["restricting"],
  judge: ({ from }) => {
    if (!from["social.settledBy"]) return [];
    const condition = { on: "group.company", of: "from", wanted: { oneOf: [true] } } as const;
    return [{ weight: "restricting", watchFor: "hiding", condition }];
  },
});
