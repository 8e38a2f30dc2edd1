import { defineRule } from "../../rule";
import { mayHave } from "../shared/acts";

export const interbreeding = defineRule({
  id: "interbreeding",
  question: "Do its males have offspring with the other's females?",
  way: "each-way",
  needs: { from: ["reproduction.interbreedsWith"], to: [] },
  mayYield: ["restricting"],
  judge: ({ from, to }) => {
    const crosses = from["reproduction.interbreedsWith"].includes(to.party.species.id);
    if (!crosses || !mayHave(from.party, "male") || !mayHave(to.party, "female")) return [];
    const condition = { on: "group.males", of: "from", within: { max: 0 } } as const;
    return [{ weight: "restricting", condition, watchFor: "eggs or young" }];
  },
});
