import { claimsOf, type Territory } from "../../animals/territories";
import { type WantedBy, wantedBy, wantedKin } from "../../animals/wanted";
import { ownRule } from "../../engine/rule/own-rule";
import type { SeenParty } from "../../engine/rule/rule";

type Holder = SeenParty<"space.territory", WantedBy>;

interface Claim extends Territory {
  /** The species. */
  readonly id: string;
  /** The group that holds, an index into those seen. */
  readonly about: number;
  /** How many territories its animals hold. */
  readonly count: number;
}

/**
 * Does the furnished floor yield as many territories as are held?
 *
 * A floor yields territories in two ways: by area, and by sight, since holders that see each other keep fighting. Things
 * that break the line of sight part the ground into one place more than they are.
 */
export const territories = /* @__PURE__ */ ownRule({
  id: "territories",
  way: "all-groups",
  needs: { from: ["space.territory"] },
  uses: { from: wantedBy },
  mayAdd: wantedBy,
  reads: ["tank.footprint"],
  mayYield: ["restricting"],
  measures: {
    zone: "zone",
    holder: "territoryHolder",
    own: "count",
    area: "cm2",
    held: "count",
    planned: "cm2",
  },
  judge: ({ groups, plan }) => {
    const claims = groups.flatMap(claimOf);
    return claims.flatMap((claim) => {
      const kinds = ofEachKind(claims.filter(({ zone }) => zone === claim.zone));
      const held = sum(kinds.map((kind) => greatest(kind.map(({ count }) => count))));
      const needed = sum(kinds.map((kind) => greatest(kind.map((own) => own.count * own.area))));
      if (held < 2) return [];
      const { about, zone, holder, count: own, area } = claim;
      const measures = { zone, holder, own, area, held, planned: plan["tank.footprint"] };
      const finding = { about, weight: "restricting", measures, watchFor: "chasing" } as const;
      const floor = { on: "tank.footprint", wanted: { min: needed } } as const;
      const sight = { on: "tank.sightBreaks", wanted: { min: held - 1 } } as const;
      return (zone === "bottom" ? [floor, sight] : [floor]).map((condition) => ({ ...finding, condition }));
    });
  },
});

function claimOf(group: Holder, about: number): readonly Claim[] {
  const territory = group["space.territory"];
  if (territory === "none") return [];
  const { id } = group.party;
  const count = claimsOf(territory, wantedKin(group));
  return count > 0 ? [{ ...territory, id, about, count }] : [];
}

/** The claims of each species by themselves: their numbers are those of all its groups. */
function ofEachKind(claims: readonly Claim[]): readonly (readonly Claim[])[] {
  const ids = [...new Set(claims.map(({ id }) => id))];
  return ids.map((kind) => claims.filter(({ id }) => id === kind));
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);
const greatest = (numbers: readonly number[]) => numbers.reduce((most, number) => Math.max(most, number), 0);
