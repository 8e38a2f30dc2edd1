import { type Finding, type Planner, planner, type WitnessOptions, witness } from "../../compatibility";
import type { FactName, Group } from "../../plan";
import type { TankDimensions } from "../../tank";

/** A tank in which nothing is short of room, cm. */
const roomy: TankDimensions = { base: { shape: "rectangle", length: 1000, width: 500 }, height: 100 };

/**
 * A plan in which some animals have all that they need, room included; or, where nothing makes that so, the animals in
 * a bare tank.
 */
export function furnishedFor(groups: readonly Group[], seeking: WitnessOptions): Planner {
  const bare = { tank: roomy, groups };
  return planner(witness(bare, seeking) ?? bare, assessingBy(seeking));
}

/** A plan in a tank of another shape, furnished alike. */
const inTank = (furnished: Planner, shape: TankDimensions): Planner =>
  furnished.with({
    tank: { unit: undefined, measured: undefined, glass: undefined, waterBelowRim: undefined, ...shape },
  });

/** What no furnishing changes. */
const ofSize: readonly FactName[] = ["tank.longestRun", "tank.footprint", "tank.height"];

/** The plan in a tank of this shape, furnished so that it is suitable; undefined where no furnishing that is tried makes it so. */
export function suitableIn(
  furnished: Planner,
  shape: TankDimensions,
  seeking: WitnessOptions,
): Planner | undefined {
  const judged = inTank(furnished, shape);
  if (judged.outcome !== "conditional") return judged.outcome === "suitable" ? judged : undefined;
  if (judged.verdict.conditions.some(({ on }) => ofSize.includes(on))) return undefined;
  const { base, height } = judged.plan.tank;
  const found = witness(judged.plan, seeking);
  if (found?.tank.base !== base || found.tank.height !== height) return undefined;
  return planner(found, assessingBy(seeking));
}

/** What speaks against a plan in a tank of this shape. */
export const againstIn = (furnished: Planner, shape: TankDimensions): readonly Finding[] =>
  inTank(furnished, shape).verdict.findings.filter(
    ({ weight }) => weight === "blocking" || weight === "restricting",
  );

const assessingBy = ({ rules, thresholds }: WitnessOptions) => ({ rules, thresholds });
