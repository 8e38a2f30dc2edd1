import { InvalidInputError, problemsAt } from "../../../errors";
import { gathered } from "../../../gathered";
import { type CheckedPlan, conditionProblems, factUnits, holds } from "../../../plan/inner";
import { contains } from "../../../ranges";
import { statedIn, statedOf } from "../../../ranges/inner";
import type { AimedCondition, GivenCondition, Judged } from "../rule/finding";
import type { Rule } from "../rule/rule";
import { gravity, type Weight } from "../rule/weight";
import { isMissing, type Subject } from "../sides/subject";
import type { ReadTrait } from "../worlds";
import { aimedAt } from "./aimed-at";

/** An answer, whom it concerns, its condition about a party by index, and how that stands in a plan. */
export interface Standing {
  readonly answer: Judged;
  readonly from: number | undefined;
  readonly to: number | undefined;
  readonly condition?: AimedCondition;
  /** Of what blocks: a form that would not be harmed. */
  readonly instead?: AimedCondition;
  /** Whether the plan meets the condition; without one it does not, nor without a plan, but for a sex or a number that is said. */
  readonly state: "met" | "unmet" | "not-given" | "not-known";
}

/** How a condition stands without a plan: met where it asks for the sex, or the number, that is said of a party. */
function stateAlone({ on, of, wanted }: AimedCondition, sides: readonly Subject[]): "met" | "unmet" {
  const { sex, kin } = sides.find(({ index }) => index === of)?.animals ?? {};
  if ("oneOf" in wanted)
    return on === "group.sex" && sex !== undefined && wanted.oneOf.includes(sex) ? "met" : "unmet";
  const isSaid = on === "group.count" && kin?.count !== undefined && contains(statedOf(wanted), kin.count);
  return isSaid ? "met" : "unmet";
}

/** Whether an answer asks for a condition. */
export const hasCondition = (
  standing: Standing,
): standing is Standing & Required<Pick<Standing, "condition">> => standing.condition !== undefined;

/** An answer, from a rule about all groups together with the one it is about. */
export type LocatedAnswer = Judged & { readonly about?: number };

/** A plan with its parties as subjects. */
export interface PlanSubjects {
  readonly plan: CheckedPlan;
  readonly subjects: readonly Subject[];
}

/** How an answer stands, in one world. */
export function standingOf(
  rule: Rule,
  given: LocatedAnswer,
  sides: readonly Subject[],
  plan: PlanSubjects | undefined,
  read: ReadTrait,
): Standing {
  refuseUndeclared(rule, given);
  const { about } = given;
  const from = sides[about ?? 0]?.index;
  const to = about === undefined ? sides[1]?.index : undefined;
  const within = (plan?.subjects ?? sides).length;
  if (given.weight === "restricting") {
    const condition = located(rule, given.condition, { from, to }, within);
    const state = plan ? stateOf(condition, plan, read) : stateAlone(condition, sides);
    return { answer: given, from, to, condition, state };
  }
  if (given.weight !== "blocking" || !given.instead) return { answer: given, from, to, state: "unmet" };
  const instead = located(rule, given.instead, { from, to }, within);
  return { answer: given, from, to, instead, state: "unmet" };
}

/** A condition with the index of its party and the unit of its numbers; refused where no plan could be held to it. */
function located(
  { id }: Rule,
  given: GivenCondition,
  parties: Pick<Standing, "from" | "to">,
  count: number,
): AimedCondition {
  const { on, of, wanted, aim }: GivenCondition = Object(given);
  const party = of && parties[of];
  const problems = conditionProblems({ on, of: party, wanted }, count);
  if (problems.length > 0) throw new InvalidInputError(problemsAt(["rules", id, "condition"], problems));
  const unit = factUnits[on];
  const own = "oneOf" in wanted ? { oneOf: [...wanted.oneOf] } : statedIn(wanted, unit);
  return aimedAt({ on, of: party, wanted: own }, aim && statedOf(aim));
}

/** The utmost that a rule may ask for of whom it judges; where it judges all groups together, of each. */
export function utmostOf(rule: Rule, { sides, plan, mayAsk }: Asking): readonly AimedCondition[] {
  const judged = rule.way === "all-groups" ? sides.map((side) => [side]) : [sides];
  const count = (plan?.subjects ?? sides).length;
  return gathered(judged, ([from, to]) =>
    mayAsk.map((condition) => located(rule, condition, { from: from?.index, to: to?.index }, count)),
  );
}

/** Whom a rule judges, and the utmost that it may ask for. */
export interface Asking {
  readonly sides: readonly Subject[];
  readonly plan?: PlanSubjects | undefined;
  readonly mayAsk: readonly GivenCondition[];
}

function stateOf(
  condition: AimedCondition,
  { plan, subjects }: PlanSubjects,
  read: ReadTrait,
): Standing["state"] {
  let lacks = false;
  const met = holds(condition, plan, (of, trait) => {
    const subject = subjects[of];
    if (!subject) return undefined;
    const reading = subject.reading(trait);
    lacks ||= isMissing(reading);
    return read(reading) as never;
  });
  if (met === undefined) return lacks ? "not-known" : "not-given";
  return met ? "met" : "unmet";
}

/**
 * The gravity of a rule's answers at least and at most: if what is not known of traits were as it should be, and if it
 * were not; if individuals do not do what nobody can tell in advance, and if they do. What the plan does not give is not
 * met in either.
 */
export function spanOf(standing: readonly Standing[]) {
  let [least, greatest] = [0, 0];
  for (const { answer, state } of standing) {
    if (state === "met") continue;
    greatest = Math.max(greatest, gravity[couldBe(answer) ?? answer.weight]);
    if (state !== "not-known") least = Math.max(least, gravity[answer.weight]);
  }
  return { least, greatest };
}

/** What an answer could turn out to be, where nobody can tell in advance. */
export const couldBe = (answer: Judged) => (answer.weight === "advisory" ? answer.couldBe : undefined);

/** What a rule answers has to be what it said it would. */
function refuseUndeclared({ id, mayYield, measures }: Rule, given: Judged): void {
  const { weight, measures: answered }: Judged = Object(given);
  const allowed: readonly Weight[] = mayYield;
  if (!allowed.includes(weight)) {
    const expected = `findings that are ${allowed.join(" or ")}, as its mayYield says`;
    throw new InvalidInputError([{ path: ["rules", id], code: "word", expected, found: weight }]);
  }
  if (!answered) return;
  for (const name of Object.keys(answered)) {
    if (measures && Object.hasOwn(measures, name)) continue;
    const expected = "measures that it declares";
    throw new InvalidInputError([{ path: ["rules", id], code: "unknown-key", expected, found: name }]);
  }
}
