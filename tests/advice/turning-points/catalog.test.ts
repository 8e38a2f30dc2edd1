import fc from "fast-check";
import { expect, test } from "vitest";
import { type Stretch, turningPoints } from "../../../src/advice";
import { assessPlan, pairPlan } from "../../../src/compatibility";
import type { Plan } from "../../../src/plan";
import { classes } from "../../../src/species";
import { anySpecies } from "../../drawn";
import { runs, seedOf } from "../../runs";
import { faultsOf, followed } from "./by-hand";

const base = { shape: "rectangle", length: 200, width: 50 } as const;

/** Tanks of that base in which two species of the catalog live, well but for want of room, of which nobody says the sexes: others for each draw. */
function tanksOfTwo(draw: number): readonly Plan[] {
  const wanted = runs(6);
  return fc
    .sample(fc.tuple(anySpecies, anySpecies), { seed: seedOf(draw), numRuns: wanted * 6 })
    .flatMap(([a, b]) => {
      const plan = pairPlan({ species: a }, { species: b });
      const isPlain = plan?.groups.every(({ males, females }) => !males && !females);
      return plan && isPlain ? [{ ...plan, tank: { ...plan.tank, base } }] : [];
    })
    .slice(0, wanted);
}
const nameOf = ({ groups }: Plan) => groups.map(({ species }) => species.id).join(", ");

test.each(followed)(
  "along $on of $of nothing changes but where it is told, in tanks of any company",
  (options) => {
    let turns = 0;
    const plans = tanksOfTwo(followed.indexOf(options));
    expect(plans.length).toBeGreaterThanOrEqual(runs(4));
    for (const plan of plans) {
      const found = faultsOf(plan, options, turningPoints(plan, options), 41);
      expect([nameOf(plan), found.faults]).toEqual([nameOf(plan), []]);
      turns += found.turns;
    }
    expect(turns).toBeGreaterThanOrEqual(runs(3));
  },
);

test.each(["tank.flow.calmest", "tank.flow.strongest"] as const)("along %s likewise", (on) => {
  const names = Object.keys(classes.flow) as (keyof typeof classes.flow)[];
  const placeOf = (current: unknown) => names.map(String).indexOf(String(current));
  const holding = (stretches: readonly Stretch[], place: number) =>
    stretches.filter(({ from, to }) => placeOf(from) <= place && place <= placeOf(to));
  const plans = tanksOfTwo(9);
  for (const plan of plans) {
    const stretches = turningPoints(plan, { on });
    for (const [place, current] of names.entries()) {
      const { calmest, strongest } = plan.tank.flow ?? {};
      const at = (other: string | undefined) => (other === undefined ? place : placeOf(other));
      const flow =
        on === "tank.flow.calmest"
          ? { calmest: current, strongest: names[Math.max(place, at(strongest))] ?? current }
          : { calmest: names[Math.min(place, at(calmest))] ?? current, strongest: current };
      const { outcome } = assessPlan({ ...plan, tank: { ...plan.tank, flow } });
      expect([nameOf(plan), current, holding(stretches, place).map((told) => told.outcome)]).toEqual([
        nameOf(plan),
        current,
        [outcome],
      ]);
    }
  }
  expect(names.length).toBeGreaterThan(3);
});
