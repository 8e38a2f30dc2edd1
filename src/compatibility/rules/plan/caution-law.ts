import { defineRule } from "../../rule";

export const cautionLaw = defineRule({
  id: "caution-law",
  question: "Does a law name it?",
  way: "each-group",
  needs: { from: [] },
  mayYield: ["advisory"],
  judge: ({ from }) =>
    (from.party.species.listings ?? []).map(({ jurisdiction, instrument, date, effect, basis }) => ({
      weight: "advisory",
      measures: {
        jurisdiction: { value: jurisdiction },
        instrument: { value: instrument },
        date: { value: date },
        effect: { value: effect },
        ...(basis === "memory" && { basis: { value: basis } }),
      },
    })),
});
