import { objectOf } from "../../checks";
import type { Plan } from "../../plan";
import { type Condition, facts, isMet } from "../../plan";
import { profilesOf } from "../../plan/inner";
import type { SpeciesProfile } from "../../species";
import type { AssessOptions } from "../assess/assess-options";
import { assessPair } from "../assess/assess-pair";
import { assessPlan } from "../assess/assess-plan";
import type { JointCondition, Verdict } from "../verdict/verdict";
import { coverInsteadOfCompany } from "./dense-cover";
import { meeting } from "./meeting";
import { sexAsked } from "./sex-asked";

/** How a plan is sought that keeps the promise of a verdict. */
export interface WitnessOptions extends AssessOptions {
  /** Calm species of which a group may be added where a shy one asks for company; the one to try first. */
  readonly company?: readonly SpeciesProfile[] | undefined;
}

/** How often conditions are met and the plan is judged again; two rounds meet nearly all. */
const mostRounds = 8;

/**
 * The plan that keeps the promise of a conditional verdict: with every group at least as named, changed only in facts that
 * the conditions name or that were not given, and judged suitable; cover may stand in for company. A suitable plan is its
 * own witness. Undefined where there is none: where anything blocks, or where nobody can tell.
 *
 * @throws InvalidInputError for what `assessPlan` refuses, and for company that is no list of profiles.
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
  const { company: offered = [], ...assessing } = objectOf(options, "options");
  const company = profilesOf(offered, ["options", "company"]);
  let [current, verdict] = [plan, assessPlan(plan, assessing)];
  const mayChange = changeable(plan, verdict.conditions);
  for (let round = 0; round < mostRounds && verdict.outcome === "conditional"; round += 1) {
    current = allMet(current, verdict, { company, assessing, mayChange });
    verdict = assessPlan(current, assessing);
  }
  return verdict.outcome === "suitable" ? current : undefined;
}

/**
 * Tells of which conditions a plan may be changed to meet them: those about what others name or the plan leaves out, and
 * about cover and the open water beside it where others name company, since cover settles as well.
 */
function changeable(plan: Plan, named: readonly Condition[]): (condition: Condition) => boolean {
  return ({ on, of }) =>
    (of ?? 0) >= plan.groups.length ||
    named.some((condition) => condition.on === on && condition.of === of) ||
    (isOfCover(on) && named.some((condition) => condition.on === "group.company")) ||
    facts[on].paths.every((path) => fieldAt(plan, path, of) === undefined);
}

const isOfCover = (on: Condition["on"]) => on === "tank.cover" || on === "tank.openWater";

/** What a plan says at a path; `of` stands for the index of a group. */
const fieldAt = (plan: Plan, path: readonly string[], of = 0): unknown =>
  path.reduce<unknown>((held, step) => Object(held)[step === "of" ? of : step], plan);

interface Seeking {
  readonly company: readonly SpeciesProfile[];
  readonly assessing: AssessOptions;
  readonly mayChange: (condition: Condition) => boolean;
}

/** Meets all conditions, company last: it lives in what the others made of the tank. */
function allMet(plan: Plan, verdict: Verdict, seeking: Seeking): Plan {
  const { conditions } = verdict;
  const isOfCompany = ({ on }: Condition) => on === "group.company";
  const ordered = [...conditions.filter((one) => !isOfCompany(one)), ...conditions.filter(isOfCompany)];
  return ordered.reduce((met, condition) => {
    if (isMet(condition, met) === true) return met;
    return isOfCompany(condition)
      ? withCompany(met, condition, seeking)
      : meeting(met, condition, {
          sexOf: (of) => sexAsked(verdict, of),
          thresholds: seeking.assessing.thresholds,
        });
  }, plan);
}

/**
 * A plan with company that asks for nothing but what may be changed; else with cover so dense that none is needed, where
 * that may be; else with company for which the tank has to be changed as well.
 */
function withCompany(plan: Plan, condition: JointCondition, seeking: Seeking): Plan {
  const { company, assessing, mayChange } = seeking;
  let other: Plan | undefined;
  for (const calm of company) {
    if (!goesWith(calm, plan, assessing)) continue;
    const settled = meeting(plan, condition, { calm });
    const { outcome, conditions } = assessPlan(settled, assessing);
    if (outcome === "unsuitable" || outcome === "undetermined" || isMet(condition, settled) !== true)
      continue;
    if (conditions.every(mayChange)) return settled;
    other ??= settled;
  }
  return inDenseCover(plan, seeking) ?? other ?? plan;
}

/** The plan in cover so dense that all settle by themselves, where the cover may be changed and nothing else asks for company. */
function inDenseCover(plan: Plan, { assessing, mayChange }: Seeking): Plan | undefined {
  const share = coverInsteadOfCompany(assessPlan(plan, assessing).findings);
  if (share === undefined) return undefined;
  const dense = { on: "tank.cover", wanted: { min: share }, findings: [] } as const;
  if (!mayChange(dense)) return undefined;
  const covered = meeting(plan, dense);
  const { outcome, conditions } = assessPlan(covered, assessing);
  const isSettled = outcome === "suitable" || outcome === "conditional";
  return isSettled && conditions.every((one) => one.on !== "group.company" && mayChange(one))
    ? covered
    : undefined;
}

/** Whether nothing rules company out beside any group, and it is not there yet. */
const goesWith = (calm: SpeciesProfile, { groups }: Plan, options: AssessOptions) =>
  groups.every(({ species, form }) => {
    if (species.id === calm.id) return false;
    const { outcome } = assessPair({ species: calm }, { species, form }, withoutPlanRules(options));
    return outcome === "suitable" || outcome === "conditional";
  });

/** Company is chosen by the library's rules about pairs, whatever the plan is judged by. */
const withoutPlanRules = ({ thresholds }: AssessOptions): AssessOptions => (thresholds ? { thresholds } : {});
