import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { assessPlan, planRules, type Rule } from "../../../src/compatibility";
import type { Group, Plan } from "../../../src/plan";
import { anySpecies } from "../../drawn";
import { runs } from "../../runs";
import { animal } from "../animals";
import { animals, fish, tanks, waters } from "../arbitrary";
import { rank } from "../ranks";
import { profileOf } from "../worlds";

const together: readonly Rule[] = planRules.filter(({ way }) => way === "all-groups");
const paths = together.flatMap(({ needs, uses }) => [...(needs?.from ?? []), ...(uses?.from ?? [])]);

const species = (id: string) => fc.oneof(anySpecies, fish(id, paths).map(profileOf));
const group = (id: string): fc.Arbitrary<Group> =>
  fc.tuple(species(id), animals).map(([kind, kept]) => ({ species: kind, ...kept }));
/** Tanks of which some hold much and lack little, so that rules restrict rather than block. */
const roomy = fc.tuple(tanks, fc.constantFrom(60, 110, 200)).map(([tank, length]) => ({
  ...tank,
  base: { ...tank.base, length, width: length / 2 },
}));
const plans: fc.Arbitrary<Plan> = fc.record({
  tank: fc.oneof(tanks, roomy),
  water: waters,
  groups: fc.oneof(fc.tuple(group("a")), fc.tuple(group("a"), group("b"), group("c"))),
});

test("there are rules about all groups together", () => {
  expect(together.map(({ id }) => id)).toEqual([
    "cool-season",
    "zones",
    "territories",
    "hiding-places",
    "settling-company",
  ]);
});

describe("a group of which nobody knows anything", () => {
  const stranger: Group = { species: animal("stranger"), unsexed: 6 };
  const at = fc.nat({ max: 3 });

  const demanding = together.filter(({ mayYield }) => mayYield.some((weight) => weight === "restricting"));

  test.each(demanding.map((rule) => [rule.id, rule] as const))("improves nothing for %s", (_, rule) => {
    let restricted = 0;
    fc.assert(
      fc.property(plans, at, (plan, index) => {
        const alone = assessPlan(plan, { rules: [rule] });
        const groups = [...plan.groups.slice(0, index), stranger, ...plan.groups.slice(index)];
        const joined = assessPlan({ ...plan, groups }, { rules: [rule] });
        if (alone.bounds.atBest === "conditional") restricted += 1;
        expect(rank(joined.bounds.atBest)).toBeGreaterThanOrEqual(rank(alone.bounds.atBest));
        expect(rank(joined.bounds.atWorst)).toBeGreaterThanOrEqual(rank(alone.bounds.atWorst));
        if (joined.outcome !== "undetermined")
          expect(rank(joined.outcome)).toBeGreaterThanOrEqual(rank(alone.outcome));
        expect(joined.findings).toHaveLength(alone.findings.length);
      }),
      { numRuns: runs(300) },
    );
    expect(restricted).toBeGreaterThan(0);
  });
});
