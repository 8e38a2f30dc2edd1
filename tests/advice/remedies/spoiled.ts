// Plans of two or three groups that live well but for a few things that somebody got wrong.
import fc from "fast-check";
import { pairPlan } from "../../../src/compatibility";
import type { Group, Plan } from "../../../src/plan";
import { anySpecies } from "../../drawn";

type Spoil = (plan: Plan) => Plan;

const tank =
  (changed: Partial<Plan["tank"]>): Spoil =>
  (plan) => ({ ...plan, tank: { ...plan.tank, ...changed } });
const water =
  (changed: Plan["water"]): Spoil =>
  (plan) => ({ ...plan, water: { ...plan.water, ...changed } });
const fewer: Spoil = (plan) => ({
  ...plan,
  groups: plan.groups.map(
    (group, index): Group => (index === 0 ? { species: group.species, unsexed: 1 } : group),
  ),
});

const spoils: readonly Spoil[] = [
  water({ temperature: 31 }),
  water({ temperature: 18 }),
  water({ pH: 8.4, generalHardness: 22 }),
  tank({ cover: 0.05 }),
  tank({ lid: false }),
  tank({ base: { shape: "rectangle", length: 60, width: 30 }, height: 30 }),
  tank({ flow: { calmest: "still", strongest: "still" } }),
  tank({ hides: {}, substrate: "coarse-gravel" }),
  tank({ filter: { mediaArea: 0.01, age: 90 } }),
  (plan) => ({ ...plan, offerings: [] }),
  fewer,
];

/** So many plans, the same ones for a seed. */
export function spoiledPlans(count: number, seed: number): readonly Plan[] {
  const wish = fc.record({
    two: fc.tuple(anySpecies, anySpecies),
    third: fc.option(anySpecies),
    wrong: fc.subarray([...spoils], { minLength: 1, maxLength: 2 }),
  });
  return fc
    .sample(wish, { numRuns: count * 4, seed })
    .flatMap(({ two: [a, b], third, wrong }) => {
      const plan = pairPlan({ species: a }, { species: b });
      if (!plan) return [];
      const groups = third ? [...plan.groups, { species: third, unsexed: 3 }] : plan.groups;
      return [wrong.reduce<Plan>((spoiled, spoil) => spoil(spoiled), { ...plan, groups })];
    })
    .slice(0, count);
}
