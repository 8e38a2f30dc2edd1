import { ownCopy } from "../../frozen";
import type { Plan } from "../../plan";
import { type CheckedParty, measuredPlan, refuseUnsound } from "../../plan/inner";
import type { AssessOptions } from "../assess/assess-options";
import { assessPlanWith } from "../assess/assess-plan";
import { type JudgedPlan, judgedPlan } from "../assess/judged-plan";
import type { AssessWith } from "../engine/rule/rule";
import { type Together, takenTogether } from "../verdict/taken-together";
import type { Outcome, Verdict } from "../verdict/verdict";
import { verdictOf } from "../verdict/verdict-of";
import { type PlanChange, withChange } from "./plan-change";

/** A plan that is being made, judged as often as it is changed. */
export interface Planner {
  /** The plan as it stands, a copy of the one given; it cannot be changed. */
  readonly plan: Plan;
  /** As `assessPlan` has it, without the work of building a verdict. */
  readonly outcome: Outcome;
  /** As `assessPlan` has them, without the work of building a verdict. */
  readonly bounds: Verdict["bounds"];
  /** What `assessPlan` says of the plan. */
  readonly verdict: Verdict;
  /**
   * The planner of the plan with a change made to it; this one stays as it is.
   *
   * @throws InvalidInputError where the changed plan is none.
   */
  readonly with: (change: PlanChange) => Planner;
}

/**
 * Judges a plan that changes step by step: with each change only those rules judge again, of those groups alone, that read
 * something that is different now. What it says is what `assessPlan` says of the plan. For searching and for forms that are
 * filled in; profiles must not be changed meanwhile.
 *
 * @throws InvalidInputError for what `assessPlan` refuses.
 *
 * @example
 * ```ts
 * import tanichthysAlbonubes from "vivary/catalog/tanichthys-albonubes";
 * import { planner } from "vivary/compatibility";
 *
 * const few = planner({
 *   tank: { base: { shape: "rectangle", length: 80, width: 35 } },
 *   water: { temperature: 27 },
 *   groups: [{ species: tanichthysAlbonubes, unsexed: 10 }],
 * });
 * const cooler = few.with({ water: { temperature: 19 } });
 * few.verdict.findings.length > cooler.verdict.findings.length; // => true
 * ```
 */
export function planner(plan: Plan, options: AssessOptions = {}): Planner {
  return plannerOf(ownPlan(plan), assessPlanWith(options));
}

/** The plan of which another comes by a change. */
interface Origin {
  readonly plan: Plan;
  readonly parties: readonly CheckedParty[];
  /** What is known of the last plan up to this one that was judged; of the first one in any case. */
  readonly judged: () => JudgedPlan;
}

/** @param plan - An own copy. */
function plannerOf(plan: Plan, by: AssessWith, origin?: Origin): Planner {
  const checked = measuredPlan(plan, origin?.plan.groups === plan.groups ? origin.parties : undefined);
  let before = origin?.judged;
  let judged: JudgedPlan | undefined;
  let together: Together | undefined;
  let verdict: Verdict | undefined;
  const judge = () => {
    judged ??= judgedPlan(checked, by, before?.());
    before = undefined;
    return judged;
  };
  const weigh = () => {
    together ??= takenTogether(judge().subjects, judge().said, by);
    return together;
  };
  return Object.freeze({
    plan,
    get outcome() {
      return weigh().outcome;
    },
    get bounds() {
      return weigh().bounds;
    },
    get verdict() {
      verdict ??= verdictOf(judge().subjects, judge().said, weigh(), by);
      return verdict;
    },
    with: (change: PlanChange) =>
      plannerOf(ownPlan(withChange(plan, change), plan.groups), by, {
        plan,
        parties: checked.parties,
        judged: () => judged ?? before?.() ?? judge(),
      }),
  });
}

/**
 * A plan that nobody else can change, with which nothing is wrong; its profiles are those given.
 *
 * @param own - Groups of an own copy: they need no other, nor to be looked at again.
 */
function ownPlan(plan: Plan, own?: Plan["groups"]): Plan {
  refuseUnsound(plan, own);
  const { groups, ...others } = plan;
  const copies = groups === own ? own : Object.freeze(groups.map((group) => Object.freeze({ ...group })));
  return Object.freeze({ ...ownCopy(others), groups: copies });
}
