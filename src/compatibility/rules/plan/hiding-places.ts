import { claimsOf } from "../../animals/territories";
import { wantedBy, wantedKin } from "../../animals/wanted";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";

type Hider = SeenParty<"space.hides", (typeof wantedBy)[number]>;

/** Who uses the same kinds of hiding places needs its own beside the others'; those that lie together share one. */
export const hidingPlaces = /* @__PURE__ */ ownRule({
  id: "hiding-places",
  question: "Does each find a place to hide, sleep or spawn in?",
  way: "all-groups",
  needs: { from: ["space.hides"] },
  uses: { from: wantedBy },
  mayAdd: wantedBy,
  mayYield: ["restricting"],
  measures: { kinds: ["hide"], needed: "count" },
  judge: ({ groups }) =>
    groups.flatMap((own, about) => {
      const kinds = kindsOf(own);
      if (kinds.length === 0) return [];
      const needed = needsOf(groups.filter((other) => kindsOf(other).some((kind) => kinds.includes(kind))));
      const condition = { on: "tank.hides", of: "from", wanted: { min: needed } } as const;
      return needed === 0
        ? []
        : [
            {
              about,
              weight: "restricting" as const,
              measures: { kinds, needed },
              watchFor: "hiding" as const,
              condition,
            },
          ];
    }),
});

const kindsOf = ({ "space.hides": hides }: Hider) => [...new Set(hides.flatMap(({ anyOf }) => anyOf))];

/** How many places these need; the groups of one species together. */
function needsOf(groups: readonly Hider[]): number {
  const ofSpecies = new Map(groups.map((group) => [group.party.id, needOf(group)]));
  return [...ofSpecies.values()].reduce((sum, need) => sum + need, 0);
}

function needOf(group: Hider): number {
  const kin = wantedKin(group);
  return group["space.hides"].reduce(
    (most, { each, holder, sharedBy = 1 }) =>
      Math.max(most, each * Math.max(Math.ceil(claimsOf({ holder }, kin) / sharedBy), 1)),
    0,
  );
}
