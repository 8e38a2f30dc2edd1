import {
  type Finding,
  type Planner,
  planner,
  type RuleId,
  type WitnessOptions,
  witness,
} from "../../compatibility";
import { roomy } from "../../compatibility/inner";
import type { FactName, Group } from "../../plan";
import type { TankDimensions } from "../../tank";

/** Some animals in a tank that has room for all that they need. */
export interface Furnished {
  readonly planner: Planner;
  /** How what they still lack in another tank is sought. */
  readonly seeking: WitnessOptions;
}

/** The animals by themselves, and with the company that they may have where that comes in at all. */
export function furnishedFor(
  groups: readonly Group[],
  { company, ...assessing }: WitnessOptions,
): readonly Furnished[] {
  const alone = furnishedBy(groups, assessing);
  if (company === undefined) return [alone];
  const beside = furnishedBy(groups, { company, ...assessing });
  return beside.planner.plan.groups.length > groups.length ? [alone, beside] : [alone];
}

/**
 * A plan in which some animals have all that they need, room included; or, where nothing makes that so, the animals in
 * a bare tank.
 */
function furnishedBy(groups: readonly Group[], seeking: WitnessOptions): Furnished {
  const bare = { tank: roomy, groups };
  return { planner: planner(witness(bare, seeking) ?? bare, assessingBy(seeking)), seeking };
}

/** A plan in a tank of another shape, furnished alike. */
const inTank = (furnished: Planner, shape: TankDimensions): Planner =>
  furnished.with({
    tank: { unit: undefined, measured: undefined, glass: undefined, waterBelowRim: undefined, ...shape },
  });

/** What no furnishing changes. */
const ofSize: readonly FactName[] = ["tank.longestRun", "tank.footprint", "tank.height"];

/** The first that is suitable in a tank of this shape; undefined where no furnishing that is tried makes one so. */
export function suitableIn(all: readonly Furnished[], shape: TankDimensions): Planner | undefined {
  for (const furnished of all) {
    const found = refurnished(furnished, shape);
    if (found) return found;
  }
  return undefined;
}

/** The plan in a tank of this shape, furnished so that it is suitable. */
function refurnished({ planner: furnished, seeking }: Furnished, shape: TankDimensions): Planner | undefined {
  const judged = inTank(furnished, shape);
  if (judged.verdict.findings.some(isOfHardlyLess)) return undefined;
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
    (finding) => finding.weight === "blocking" || finding.weight === "restricting" || isOfHardlyLess(finding),
  );

const ofRoom: readonly string[] = ["longest-run", "footprint", "zones"] satisfies readonly RuleId[];

/** Whether a tank has hardly less room than is needed: that will do where it stands, but is not the least to have. */
const isOfHardlyLess = ({ rule, weight }: Finding): boolean => weight === "advisory" && ofRoom.includes(rule);

const assessingBy = ({ rules, thresholds }: WitnessOptions) => ({ rules, thresholds });
