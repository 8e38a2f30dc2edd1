import type { Finding, RuleId } from "../../compatibility";
import { type PlannedWaterRule, plannedWaterOf, plannedWaters } from "../../compatibility/inner";
import type { FactName } from "../../plan";
import { isBy } from "./by-rule";

/** The rules of what water two can share. */
export const sharedWaterRules = [
  "temperature",
  "ph",
  "general-hardness",
  "salinity",
] as const satisfies readonly RuleId[];

export type SharedWaterRule = (typeof sharedWaterRules)[number];

/** The facts that they are about. */
export const waterOf: Readonly<Record<SharedWaterRule, FactName>> = {
  temperature: "water.temperature",
  ph: "water.pH",
  "general-hardness": "water.generalHardness",
  salinity: "water.salinity",
};

/** What waters two can share: no matter of what individuals are like. */
export const isOfSharedWater = ({ rule }: { readonly rule: string }) =>
  sharedWaterRules.some((one) => one === rule);

/** The rules of the water that is planned. */
export const plannedWaterRules = /* @__PURE__ */ Object.keys(plannedWaters) as readonly PlannedWaterRule[];

/** The fact of which a finding tells that it lies outside of what its animals are kept in, though it will do. */
export function hardlyRight(finding: Finding): FactName | undefined {
  if (finding.weight !== "advisory" || !isBy(finding, plannedWaterRules)) return undefined;
  return finding.measures?.optimum ? undefined : plannedWaterOf(finding);
}

/** Whether a finding tells of water past what its animals survive. */
export const isPastLimit = (finding: Finding) =>
  isBy(finding, plannedWaterRules) && finding.measures?.limit !== undefined;
