import { certain } from "../../company";
import { defineRule, type Seen } from "../../rule";
import { claimsOf, type Territory } from "../shared/territories";

/** What a tank yields to all holders together is asked by `territories`. */
export const territoryContest = defineRule({
  id: "territory-contest",
  question: "Do both defend a place in the same part of the tank?",
  way: "mutual",
  needs: { from: ["space.territory"], to: ["space.territory"] },
  mayYield: ["restricting"],
  judge: ({ from, to }) => {
    if (holdsNone(from) || holdsNone(to)) return [];
    const [mine, theirs] = [held(from), held(to)];
    if (!mine || !theirs || mine.zone !== theirs.zone) return [];
    if (from.party.species.id === to.party.species.id) return [];
    const needed = mine.area + theirs.area;
    const measures = {
      zone: { value: mine.zone },
      from: { value: mine.area, unit: "cm2" },
      to: { value: theirs.area, unit: "cm2" },
    };
    return [
      {
        weight: "restricting",
        measures,
        watchFor: "chasing",
        condition: { on: "tank.footprint", within: { min: needed } },
      },
    ];
  },
});

/** Where one surely holds none, nothing hangs on the other. */
const holdsNone = ({ party }: Pick<Seen<never, never>, "party">) =>
  certain(party.species.space?.territory) === "none";

/** What a party defends, if there is anybody in it who would. */
function held({
  party,
  "space.territory": territory,
}: Seen<"space.territory", never>): Territory | undefined {
  if (territory === "none" || claimsOf(territory, party.kin) === 0) return undefined;
  return territory;
}
