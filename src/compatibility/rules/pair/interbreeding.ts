import { mayHave } from "../../../plan/inner";
import { defineRule } from "../../engine/rule/define-rule";
import type { SeenParty } from "../../engine/rule/rule";

type Parent = SeenParty<"reproduction.interbreedsWith", never>;

/** Whether one's record names the other. */
const names = (one: Parent, other: Parent) => one["reproduction.interbreedsWith"].includes(other.party.id);

/** One record is enough: what is true of one is true of both. Families do not cross in tanks. */
export const interbreeding = defineRule({
  id: "interbreeding",
  question: "Do its males have offspring with the other's females?",
  way: "each-way",
  needs: { from: ["reproduction.interbreedsWith"], to: ["reproduction.interbreedsWith"] },
  mayYield: ["restricting"],
  judge: ({ from, to }) => {
    if (from.party.id === to.party.id || from.party.family !== to.party.family) return [];
    if (!(names(from, to) || names(to, from)) || !mayHave(from.party, "male") || !mayHave(to.party, "female"))
      return [];
    const condition = { on: "group.males", of: "from", wanted: { max: 0 } } as const;
    return [{ weight: "restricting", condition, watchFor: "eggs or young" }];
  },
});
