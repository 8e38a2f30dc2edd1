import { defineRule } from "../../rule";

export const sexRatio = defineRule({
  id: "sex-ratio",
  question: "Are there enough females that no male wears one out?",
  way: "each-group",
  needs: { from: ["social.femalesPerMale"] },
  mayYield: ["restricting"],
  judge: ({ from }) => {
    const { count = 1, males, females } = from.party.kin;
    const min = from["social.femalesPerMale"];
    if (min === 0 || count === 1 || males === 0 || females === 0) return [];
    const measures = {
      needed: { value: min },
      ...(males && females && { planned: { value: females / males } }),
    };
    return [
      {
        weight: "restricting",
        measures,
        watchFor: "chasing",
        condition: { on: "group.femalesPerMale", of: "from", within: { min } },
      },
    ];
  },
});
