import { type AssessOptions, assessPlan, type Finding, type OpenQuestion } from "../../compatibility";
import type { Joinable, Told } from "../../compatibility/inner";
import { type Group, isMet, type Plan } from "../../plan";
import { conditionsOf } from "../conditions-of";
import { gravityOf, gravityOfFinding, gravityOfOpen } from "../gravity";
import { type Answer, gravest, isOfPlace } from "./answer";
import { answerOf } from "./by-adopted-facts";

/**
 * Whether a group may live in a tank where nobody is yet: nothing rules it out, of nothing that would is unknown whether it
 * is so, and the plan says otherwise of nothing that the group asks for.
 *
 * @param empty - The plan without it.
 */
export function byItself(empty: Plan, quick: Joinable, group: Group, options: AssessOptions): Answer {
  const joined = quick.with(group);
  if (!joined) return byItsVerdict({ ...empty, groups: [group] }, options);
  const against = gravest(joined.told, gravityOfTold, 0);
  return against
    ? { because: against.finding(), outcome: joined.outcome, said: [], met: [], unmet: [] }
    : answerOf(joined);
}

/** @param plan - That of the group alone. */
function byItsVerdict(plan: Plan, options: AssessOptions): Answer {
  const { outcome, findings, met, open } = assessPlan(plan, options);
  const because = gravest<Finding | OpenQuestion>(
    [...findings, ...open],
    (told) => ("weight" in told ? gravityInPlan(told, plan) : gravityOfOpen(told)),
    0,
  );
  return {
    ...(because && { because }),
    outcome,
    said: [...findings, ...met],
    met: conditionsOf(met),
    unmet: [],
  };
}

/** What is asked for counts only of tank and water, where the plan says otherwise. */
const gravityOfTold = ({ standing: { answer, condition, state } }: Told): number =>
  state === "met" || (condition && !(state === "unmet" && isOfPlace(condition)))
    ? 0
    : gravityOf(answer.weight, "couldBe" in answer ? answer.couldBe : undefined);

/** The same of a finding. */
const gravityInPlan = (finding: Finding, plan: Plan): number =>
  finding.weight === "restricting" &&
  !(isOfPlace(finding.condition) && isMet(finding.condition, plan) === false)
    ? 0
    : gravityOfFinding(finding);
