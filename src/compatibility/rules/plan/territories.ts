import type { AssessedPlan } from "../../assessed-plan";
import { defineRule, type Seen } from "../../rule";
import { claimsOf, type Territory } from "../shared/territories";

interface Claim extends Territory {
  /** The species. */
  readonly id: string;
  /** The group that holds, an index into those seen. */
  readonly about: number;
  /** How many territories its animals hold. */
  readonly count: number;
}

/**
 * A floor yields territories in two ways: by area, and by sight, since holders that see each other keep fighting. Things
 * that break the line of sight part the ground into one place more than they are.
 */
export const territories = defineRule({
  id: "territories",
  question: "Does the furnished floor yield as many territories as are held?",
  way: "all-groups",
  needs: { from: ["space.territory"] },
  mayYield: ["restricting"],
  judge: ({ groups, plan }) => {
    const claims = groups.flatMap(claimOf);
    return claims.flatMap((claim) => {
      const kinds = ofEachKind(claims.filter(({ zone }) => zone === claim.zone));
      const held = sum(kinds.map((kind) => Math.max(...kind.map(({ count }) => count))));
      const area = sum(kinds.map((kind) => Math.max(...kind.map((own) => own.count * own.area))));
      return held < 2 ? [] : contested(claim, held, area, plan);
    });
  },
});

function claimOf(group: Seen<"space.territory", never>, about: number): readonly Claim[] {
  const territory = group["space.territory"];
  if (territory === "none") return [];
  const { species, kin } = group.party;
  const count = claimsOf(territory, kin);
  return count > 0 ? [{ ...territory, id: species.id, about, count }] : [];
}

/** The claims of each species by themselves: their numbers are those of all its groups. */
function ofEachKind(claims: readonly Claim[]): readonly (readonly Claim[])[] {
  const ids = [...new Set(claims.map(({ id }) => id))];
  return ids.map((kind) => claims.filter(({ id }) => id === kind));
}

function contested(
  { about, zone, area, count, holder }: Claim,
  held: number,
  needed: number,
  plan: AssessedPlan,
) {
  const measures = {
    zone: { value: zone },
    holder: { value: holder },
    own: { value: count },
    area: { value: area, unit: "cm2" },
    held: { value: held },
    planned: { value: plan.nominal.footprint, unit: "cm2" },
  };
  const finding = { weight: "restricting", about, measures, watchFor: "chasing" } as const;
  const floor = { ...finding, condition: { on: "tank.footprint", within: { min: needed } } } as const;
  if (zone !== "bottom") return [floor];
  return [floor, { ...finding, condition: { on: "tank.sightBreaks", within: { min: held - 1 } } } as const];
}

const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);
