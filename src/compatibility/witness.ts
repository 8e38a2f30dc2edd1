import type { Plan } from "../plan";
import { isMet } from "../plan";
import type { SpeciesProfile } from "../species";
import type { AssessOptions } from "./assess-options";
import { assessPair } from "./assess-pair";
import { assessPlan } from "./assess-plan";
import { meeting } from "./meeting";
import type { Verdict } from "./verdict";

/** How a plan is sought that keeps the promise of a verdict. */
export interface WitnessOptions extends AssessOptions {
  /** Calm species of which a group may be added where a shy one asks for company; the one to try first. */
  readonly company?: readonly SpeciesProfile[] | undefined;
}

/** How often conditions are met and the plan is judged again; two rounds meet nearly all. */
const mostRounds = 8;

/**
 * The plan that keeps the promise of a conditional verdict: with every group at least as named, changed only in facts that
 * the conditions name or that were not given, and judged suitable. A suitable plan is its own witness. Undefined where
 * there is none: where anything blocks, or where nobody can tell.
 *
 * @throws InvalidInputError for what `assessPlan` refuses.
 *
 * @example
 * ```ts
 * import danioRerio from "vivary/catalog/danio-rerio";
 * import { assessPlan, witness } from "vivary/compatibility";
 *
 * const found = witness({
 *   tank: { base: { shape: "rectangle", length: 100, width: 40 } },
 *   groups: [{ species: danioRerio, unsexed: 4 }],
 * });
 * found && assessPlan(found).outcome; // => "suitable"
 * ```
 */
export function witness(plan: Plan, options: WitnessOptions = {}): Plan | undefined {
  const { company = [], ...assessing } = options;
  let current = plan;
  for (let round = 0; round < mostRounds; round += 1) {
    const verdict = assessPlan(current, assessing);
    if (verdict.outcome === "suitable") return current;
    if (verdict.outcome !== "conditional") return undefined;
    current = allMet(current, verdict, (settled) =>
      company.find((calm) => goesWith(calm, settled, assessing)),
    );
  }
  return undefined;
}

/** Whether nothing rules company out beside any group, and it is not there yet. */
const goesWith = (calm: SpeciesProfile, { groups }: Plan, options: AssessOptions) =>
  groups.every(({ species }) => {
    if (species.id === calm.id) return false;
    const { outcome } = assessPair({ species: calm }, { species }, withoutPlanRules(options));
    return outcome === "suitable" || outcome === "conditional";
  });

/** Company is chosen by the library's rules about pairs, whatever the plan is judged by. */
const withoutPlanRules = ({ thresholds }: AssessOptions): AssessOptions => (thresholds ? { thresholds } : {});

function allMet(
  plan: Plan,
  { conditions }: Verdict,
  companyFor: (plan: Plan) => SpeciesProfile | undefined,
): Plan {
  let met = plan;
  for (const condition of conditions) {
    if (isMet(condition, met) !== true) met = meeting(met, condition, companyFor);
  }
  return met;
}
