import type { TraitValue } from "../../../species";
import { claimsOf } from "../../animals/territories";
import { type WantedBy, wantedBy, wantedKin } from "../../animals/wanted";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";

type HideKind = TraitValue<"space.hides">[number]["anyOf"][number];
type Hider = SeenParty<"space.hides", WantedBy>;

/**
 * Does each find a place to hide, sleep or spawn in?
 *
 * Who uses the same kinds of hiding places needs its own beside the others'; those that lie together share one. Any of the
 * kinds that one of them uses counts. What these need by themselves is told where others use such places too.
 */
export const hidingPlaces = /* @__PURE__ */ ownRule({
  id: "hiding-places",
  way: "all-groups",
  needs: { from: ["space.hides"] },
  uses: { from: wantedBy },
  mayAdd: wantedBy,
  mayYield: ["restricting"],
  measures: { kinds: ["hide"], needed: "count", own: "count" },
  judge: ({ groups }) => {
    const hiders = groups.map(hiderOf);
    return hiders.flatMap(({ kinds, need }, about) => {
      const beside = hiders.filter((other) => other.kinds.some((kind) => kinds.includes(kind)));
      const needed = needOfAll(beside);
      if (needed === 0) return [];
      const condition = { on: "tank.hides", of: "from", wanted: { min: needed } } as const;
      const measures = { kinds, needed, own: need < needed ? need : undefined };
      return [{ about, weight: "restricting" as const, measures, watchFor: "hiding" as const, condition }];
    });
  },
});

/** A group, the kinds of places of which it uses any, and how many it needs. */
interface Hiding {
  readonly id: string;
  readonly kinds: readonly HideKind[];
  readonly need: number;
}

function hiderOf(group: Hider): Hiding {
  const { id } = group.party;
  const kinds = [...new Set(group["space.hides"].flatMap(({ anyOf }) => anyOf))];
  return { id, kinds, need: kinds.length > 0 ? needOf(group) : 0 };
}

/** How many places these need; the groups of one species together, by the one that needs the most. */
function needOfAll(hiders: readonly Hiding[]): number {
  const ofSpecies = new Map<string, number>();
  for (const { id, need } of hiders) ofSpecies.set(id, Math.max(need, ofSpecies.get(id) ?? 0));
  return [...ofSpecies.values()].reduce((sum, need) => sum + need, 0);
}

/** How many a group needs: males and females beside each other, where it is said of each, though no more than there are. */
function needOf(group: Hider): number {
  const kin = wantedKin(group);
  const needs = { each: 0, pair: 0, male: 0, female: 0 };
  for (const { each, holder, sharedBy = 1 } of group["space.hides"]) {
    const places = each * Math.max(Math.ceil(claimsOf({ holder }, kin) / sharedBy), 1);
    needs[holder] = Math.max(needs[holder], places);
  }
  const { male, female } = needs;
  const { count = male + female } = kin;
  return Math.max(needs.each, needs.pair, male, female, Math.min(male + female, count));
}
