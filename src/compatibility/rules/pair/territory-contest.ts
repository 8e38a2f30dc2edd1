import { claimsOf, type Territory } from "../../animals/territories";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";

type Holder = SeenParty<never, "space.territory">;

/**
 * Do both defend a place in the same part of the tank?
 *
 * What a tank yields to all holders together is asked by `territories`. Where one surely holds none, nothing hangs on
 * the other.
 */
export const territoryContest = /* @__PURE__ */ ownRule({
  id: "territory-contest",
  way: "mutual",
  between: "two-species",
  uses: { from: ["space.territory"], to: ["space.territory"] },
  mayYield: ["restricting"],
  measures: { zone: "zone", from: "cm2", to: "cm2" },
  judge: ({ from, to }) => {
    if (holdsNone(from) || holdsNone(to)) return [];
    const [mine, theirs] = [from["space.territory"], to["space.territory"]];
    if (!isPlace(mine) || !isPlace(theirs)) return "unknown";
    if (mine.zone !== theirs.zone || !isHeld(mine, from) || !isHeld(theirs, to)) return [];
    return [
      {
        weight: "restricting",
        measures: { zone: mine.zone, from: mine.area, to: theirs.area },
        watchFor: "chasing",
        condition: { on: "tank.footprint", wanted: { min: mine.area + theirs.area } },
      },
    ];
  },
});

const holdsNone = (party: Holder) => party["space.territory"] === "none";

const isPlace = (territory: Holder["space.territory"]): territory is Territory =>
  territory !== undefined && territory !== "none";

/** Whether there is anybody in a party who would defend it. */
const isHeld = (territory: Territory, { party }: Holder) => claimsOf(territory, party.kin) > 0;
