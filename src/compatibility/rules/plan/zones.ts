import type { Value } from "../../../species";
import { defineRule, type Seen } from "../../rule";
import { floorNeeded, shareOfFloor } from "../shared/floor";

type Dweller = Seen<"space.zones" | "space.footprint", "space.furtherFootprint">;

/**
 * Ground and surface are areas, and who lives there alone cannot give way: the group has the floor it needs, and every
 * animal of the others that live there adds its share. Open water is parted by moving, and grazing snails and shrimps
 * are in nobody's way.
 */
export const zones = defineRule({
  id: "zones",
  question: "Have those that live only on the ground, or only at the surface, room beside each other?",
  way: "all-groups",
  needs: { from: ["space.zones", "space.footprint"] },
  uses: { from: ["space.furtherFootprint"] },
  mayYield: ["restricting"],
  judge: ({ groups, plan }) =>
    groups.flatMap((own, about) => {
      const zone = areaOf(own);
      const there = groups.filter((other) => zone && areaOf(other) === zone);
      const alone = there.every(({ party }) => party.species.id === own.party.species.id);
      if (!zone || alone) return [];
      const others = there.filter((other) => other !== own);
      const needed = Math.round(floorOf(own) + others.reduce((sum, other) => sum + addedBy(other), 0));
      const measures = {
        zone: { value: zone },
        needed: { value: needed, unit: "cm2" },
        planned: { value: plan.nominal.footprint, unit: "cm2" },
      };
      const condition = { on: "tank.footprint", within: { min: needed } } as const;
      return [{ about, weight: "restricting" as const, measures, condition }];
    }),
});

/** Whether a group lives on the ground alone, or at the surface alone, and takes room there. */
function areaOf({ party, "space.zones": zones }: Dweller): Value<"space.zones">[number] | undefined {
  const [only, ...further] = zones;
  const { kind } = party.species.taxonomy;
  const takesRoom = kind !== "snail" && kind !== "mussel" && kind !== "shrimp";
  return takesRoom && further.length === 0 && only !== "midwater" ? only : undefined;
}

function floorOf(of: Dweller): number {
  return floorNeeded(of["space.footprint"], of["space.furtherFootprint"], of.party.count);
}

function addedBy(of: Dweller): number {
  return shareOfFloor(of["space.footprint"], of["space.furtherFootprint"]) * (of.party.count ?? 1);
}
