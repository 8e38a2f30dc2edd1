import { decimal } from "../../../decimal";
import type { TraitValue } from "../../../species";
import { type Crowd, counting } from "../../animals/crowd";
import { placeOf } from "../../animals/rivals";
import { floorNeeded } from "../../animals/room";
import { claimsOf } from "../../animals/territories";
import { wantedBy } from "../../animals/wanted";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";
import { isNearlyEnough } from "../shared/nearly-enough";

type Dweller = SeenParty<
  "space.zones" | "space.footprint",
  "space.furtherFootprint" | "space.territory" | "diet.type" | "diet.foods" | "social.living"
>;
type Zone = TraitValue<"space.zones">[number];

/**
 * Have those that live in one part of the water room beside each other?
 *
 * Ground and surface are areas: who lives on one alone cannot give way, and who lives alone or in pairs and holds a place
 * there does not, even by itself and without a brood; those that live in groups part it among them. The least floors that
 * groups need by themselves hold spare room, so each further group adds a part of its own. Open water is parted by moving,
 * so whoever swims there adds less, but it adds: as many of one kind would need more floor too. Whoever grazes panes and
 * wood is in nobody's way.
 */
export const zones = /* @__PURE__ */ ownRule({
  id: "zones",
  way: "all-groups",
  needs: { from: ["space.zones", "space.footprint"] },
  uses: {
    from: ["space.furtherFootprint", "space.territory", "diet.type", "diet.foods", "social.living"],
  },
  sums: counting,
  mayAdd: wantedBy,
  mayRestrict: ["social.living"],
  reads: ["tank.footprint"],
  decidesBy: ["besideOthers", "besideSwimmers", "farTooSmall", "nearlyWide"],
  mayYield: ["blocking", "restricting", "advisory"],
  measures: { zone: "zone", needed: "cm2", planned: "cm2" },
  judge: ({ groups, crowd, plan, thresholds }) => {
    const shares = groups.map(zonesShared);
    const neededIn = new Map(
      [...new Set(shares.flat())].flatMap((zone) => {
        const there = groups.filter((_, index) => shares[index]?.includes(zone));
        const isShared = there.some(({ party }) => party.id !== there[0]?.party.id);
        const part = zone === "midwater" ? thresholds.besideSwimmers : thresholds.besideOthers;
        return isShared ? [[zone, Math.round(together(floorsOf(there, crowd), part))]] : [];
      }),
    );
    return shares.flatMap((own, about) => {
      const asked = gravestOf(own, neededIn);
      if (!asked) return [];
      const planned = plan["tank.footprint"];
      const measures = { ...asked, planned };
      const condition = { on: "tank.footprint", wanted: { min: asked.needed } } as const;
      const isFarTooSmall = planned < decimal(thresholds.farTooSmall * asked.needed);
      const isNearly = isNearlyEnough(planned, asked.needed, thresholds.nearlyWide);
      return isFarTooSmall || isNearly
        ? { about, weight: isFarTooSmall ? ("blocking" as const) : ("advisory" as const), measures }
        : { about, weight: "restricting" as const, measures, condition };
    });
  },
});

/** That of some parts of the water where the most floor is needed: what is enough there is enough in the others. */
function gravestOf(zones: readonly Zone[], neededIn: ReadonlyMap<Zone, number>) {
  const asked = zones.flatMap((zone) => {
    const needed = neededIn.get(zone);
    return needed === undefined ? [] : [{ zone, needed }];
  });
  return asked.sort((a, b) => b.needed - a.needed)[0];
}

/** Open water where a group swims in it, ground or surface where it lives there alone or holds a place there. */
function zonesShared(dweller: Dweller): readonly Zone[] {
  if (grazes(dweller)) return [];
  const zones = dweller["space.zones"];
  return zones.filter((zone) => zone === "midwater" || zones.length === 1 || holdsPlace(dweller, zone));
}

/** Ways of living in which a place is held against all others; what nobody stated counts among them. */
const unsociable: readonly TraitValue<"social.living">[] = ["alone", "pair", "either"];

/** Whether some of a group hold a place in a part of the water against all others. What nobody stated counts as so. */
function holdsPlace(dweller: Dweller, zone: Zone): boolean {
  const { party, "space.territory": territory, "social.living": living = "alone" } = dweller;
  if (!unsociable.includes(living)) return false;
  if (territory === undefined) return true;
  const place = placeOf(territory);
  return place?.zone === zone && (place.holder === "pair" || claimsOf(place, party.kin) > 0);
}

/** Whether it lives on what grows on panes, wood and leaves. */
function grazes({ party, "diet.type": type, "diet.foods": foods }: Dweller): boolean {
  if (party.kind === "snail" || party.kind === "mussel" || party.kind === "shrimp") return true;
  const plantEater = type === "herbivore" || type === "detritivore";
  return plantEater && (foods?.some((food) => food === "algae" || food === "wood") ?? false);
}

/** The floor that each species needs, for all its animals in the plan. */
function floorsOf(groups: readonly Dweller[], crowd: Crowd): readonly number[] {
  const floors = new Map<string, number>();
  for (const group of groups) {
    const { id } = group.party;
    const number = crowd.of(group.party);
    const floor = floorNeeded(group["space.footprint"], group["space.furtherFootprint"], number);
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
