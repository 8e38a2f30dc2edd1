import { mayHave } from "../../kin";
import { defineRule, type Seen } from "../../rule";

type Parent = Seen<"reproduction.interbreedsWith", never>;

/** Whether one's record names the other. */
const names = (one: Parent, other: Parent) =>
  one["reproduction.interbreedsWith"].includes(other.party.species.id);

/** One record is enough: what is true of one is true of both. Families do not cross in tanks. */
export const interbreeding = defineRule({
  id: "interbreeding",
  question: "Do its males have offspring with the other's females?",
  way: "each-way",
  needs: { from: ["reproduction.interbreedsWith"], to: ["reproduction.interbreedsWith"] },
  mayYield: ["restricting"],
  judge: ({ from, to }) => {
    const [mine, theirs] = [from.party.species, to.party.species];
    if (mine.id === theirs.id || mine.taxonomy.family !== theirs.taxonomy.family) return [];
    if (!(names(from, to) || names(to, from)) || !mayHave(from.party, "male") || !mayHave(to.party, "female"))
      return [];
    const condition = { on: "group.males", of: "from", within: { max: 0 } } as const;
    return [{ weight: "restricting", condition, watchFor: "eggs or young" }];
  },
});
