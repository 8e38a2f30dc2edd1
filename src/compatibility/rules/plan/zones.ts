import { decimal } from "../../../decimal";
import type { TraitValue } from "../../../species";
import { floorNeeded } from "../../animals/room";
import { besideWanted, wantedBy, wantedKin } from "../../animals/wanted";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";
import { isNearlyEnough } from "../shared/nearly-enough";

type Dweller = SeenParty<
  "space.zones" | "space.footprint",
  "space.furtherFootprint" | "diet.type" | "diet.foods" | (typeof wantedBy)[number]
>;

/**
 * Ground and surface are areas, and who lives there alone cannot give way. The least floors that groups need by
 * themselves hold spare room, so each further group adds a part of its own. Open water is parted by moving, and whoever
 * grazes panes and wood is in nobody's way.
 */
export const zones = /* @__PURE__ */ ownRule({
  id: "zones",
  question: "Have those that live only on the ground, or only at the surface, room beside each other?",
  way: "all-groups",
  needs: { from: ["space.zones", "space.footprint"] },
  uses: { from: /* @__PURE__ */ besideWanted("space.furtherFootprint", "diet.type", "diet.foods") },
  mayAdd: wantedBy,
  reads: ["tank.footprint"],
  decidesBy: ["besideOthers", "farTooSmall", "nearlyWide"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures: { zone: "zone", needed: "cm2", planned: "cm2" },
  judge: ({ groups, plan, thresholds }) =>
    groups.flatMap((own, about) => {
      const zone = areaOf(own);
      const there = groups.filter((other) => zone && areaOf(other) === zone);
      if (!zone || there.every(({ party }) => party.id === own.party.id)) return [];
      const needed = Math.round(together(floorsOf(there), thresholds.besideOthers));
      const planned = plan["tank.footprint"];
      const measures = { zone, needed, planned };
      const condition = { on: "tank.footprint", wanted: { min: needed } } as const;
      const isFarTooSmall = planned < decimal(thresholds.farTooSmall * needed);
      const isNearly = isNearlyEnough(planned, needed, thresholds.nearlyWide);
      return [
        isFarTooSmall || isNearly
          ? { about, weight: isFarTooSmall ? ("blocking" as const) : ("advisory" as const), measures }
          : { about, weight: "restricting" as const, measures, condition },
      ];
    }),
});

/** Whether a group lives on the ground alone, or at the surface alone, and takes room there. */
function areaOf(dweller: Dweller): TraitValue<"space.zones">[number] | undefined {
  const [only, ...further] = dweller["space.zones"];
  return !grazes(dweller) && further.length === 0 && only !== "midwater" ? only : undefined;
}

/** Whether it lives on what grows on panes, wood and leaves. */
function grazes({ party, "diet.type": type, "diet.foods": foods }: Dweller): boolean {
  if (party.kind === "snail" || party.kind === "mussel" || party.kind === "shrimp") return true;
  const plantEater = type === "herbivore" || type === "detritivore";
  return plantEater && (foods?.some((food) => food === "algae" || food === "wood") ?? false);
}

/** The floor that each species needs, for all its animals in the plan. */
function floorsOf(groups: readonly Dweller[]): readonly number[] {
  const floors = new Map<string, number>();
  for (const group of groups) {
    const { id } = group.party;
    const { count } = wantedKin(group);
    const floor = floorNeeded(group["space.footprint"], group["space.furtherFootprint"], count);
    floors.set(id, Math.max(floor, floors.get(id) ?? 0));
  }
  return [...floors.values()];
}

/** The largest floor whole, and a part of each other. */
function together(floors: readonly number[], part: number): number {
  const largest = Math.max(...floors);
  const all = floors.reduce((sum, floor) => sum + floor, 0);
  return largest + part * (all - largest);
}
