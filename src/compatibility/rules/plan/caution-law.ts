import { defineRule } from "../../engine/rule/define-rule";

export const cautionLaw = defineRule({
  id: "caution-law",
  question: "Does a law name it?",
  way: "each-group",
  mayYield: ["advisory"],
  measures: { jurisdiction: "text", instrument: "text", date: "text", effect: "text", basis: "basis" },
  judge: ({ from }) =>
    from.party.listings.map(({ jurisdiction, instrument, date, effect, basis }) => ({
      weight: "advisory",
      measures: { jurisdiction, instrument, date, effect, basis },
    })),
});
