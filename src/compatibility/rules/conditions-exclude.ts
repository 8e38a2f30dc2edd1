import { defineRule } from "../engine/rule/define-rule";

/**
 * Said of a verdict, not of parties: conditions that no plan meets at once. It judges nothing by itself; the conditions
 * are compared when they are joined.
 */
export const conditionsExclude = /* @__PURE__ */ defineRule({
  id: "conditions-exclude",
  question: "Can all conditions be met at once?",
  way: "once",
  mayYield: ["blocking"],
  measures: { one: "text", other: "text" },
  judge: () => [],
});
