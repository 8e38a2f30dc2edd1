import { ownRule } from "../engine/rule/own-rule";

/**
 * Can all conditions be met at once?
 *
 * Said of a verdict, not of parties: conditions that no plan meets at once. It judges nothing by itself; the conditions
 * are compared when they are joined. Where an optimum stands in for what one is kept in, nobody knows.
 */
export const conditionsExclude = /* @__PURE__ */ ownRule({
  id: "conditions-exclude",
  way: "once",
  mayYield: ["blocking", "advisory"],
  measures: { one: "text", other: "text" },
  judge: () => [],
});
