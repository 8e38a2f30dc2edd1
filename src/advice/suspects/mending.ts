import type { Finding, Quantity } from "../../compatibility";
import { type PlannedWaterRule, plannedWaterOf } from "../../compatibility/inner";
import type { Condition, FactName } from "../../plan";
import { factUnits, jointCondition } from "../../plan/inner";
import type { PartialRange } from "../../ranges";
import { statedIn, statedOf } from "../../ranges/inner";
import { currentsFrom } from "../../species/inner";

/**
 * What mends a finding that is worth knowing, where the animals it is about show that it is at work: `never` where it is
 * of water that not all others can be given. Undefined where it passes, and where keepers bear with it.
 *
 * @param asked - All that the animals of the plan ask for.
 */
export function mending(finding: Finding, asked: readonly Condition[]): Condition | "never" | undefined {
  const { from: of } = finding;
  switch (finding.rule) {
    case "lid":
      return { on: "tank.lid", wanted: { oneOf: [true] } };
    case "carbon-dioxide":
      return { on: "tank.flow.strongest", wanted: { oneOf: currentsFrom("gentle") } };
    case "longest-run":
      return asNeeded("tank.longestRun", finding.measures?.needed);
    case "footprint":
    case "zones":
      return asNeeded("tank.footprint", finding.measures?.needed);
    case "group-size":
      return asNeeded("group.count", finding.measures?.needed, of);
    case "sex-ratio":
      return asNeeded("group.femalesPerMale", finding.measures?.needed, of);
    case "water-temperature":
    case "water-ph":
    case "water-hardness":
    case "water-salinity":
      return inWater(finding, asked);
    default:
      return undefined;
  }
}

/** Water that is best for an animal, else what it is kept in, as far as all others can be given it. */
function inWater(
  finding: Extract<Finding, { readonly rule: PlannedWaterRule }>,
  asked: readonly Condition[],
): Condition | "never" | undefined {
  const { kept, optimum = kept } = finding.measures ?? {};
  const on = plannedWaterOf(finding);
  const best = asNeeded(on, optimum);
  return asked
    .filter((condition) => condition.on === on)
    .reduce<Condition | "never" | undefined>(
      (all, condition) => (all && all !== "never" ? (jointCondition(all, condition) ?? "never") : all),
      best,
    );
}

/** That a fact is what a measure names: one figure at least. */
function asNeeded(on: FactName, needed: Quantity | undefined, of?: number): Condition | undefined {
  if (!needed) return undefined;
  const span: PartialRange = "value" in needed ? { min: needed.value } : statedOf(needed);
  return { on, ...(of !== undefined && { of }), wanted: statedIn(span, factUnits[on]) };
}
