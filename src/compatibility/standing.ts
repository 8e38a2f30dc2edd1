import { objectOf } from "../errors";
import type { AssessedPlan } from "./assessed-plan";
import { checkCondition } from "./check-condition";
import { gravity, type Judged, type Weight } from "./finding";
import type { Side } from "./scenarios";

/** An answer with its condition about a party by index, whom it concerns, and how it stands in a plan. */
export interface Standing {
  readonly answer: Judged<Weight, number>;
  readonly from: number | undefined;
  readonly to: number | undefined;
  readonly state: "met" | "unmet" | "not-given";
}

/** An answer, from a rule about all groups together with the one it is about. */
type Answer = Judged & { readonly about?: number };

/** Without a plan every answer stands. */
export function standingOf(given: Answer, sides: readonly Side[], plan: AssessedPlan | undefined): Standing {
  const { answer, concerned } = located(given, sides);
  const [first, second] = concerned;
  const [from, to] = [first?.subject.index, second?.subject.index];
  if (answer.weight !== "restricting") return { answer, from, to, state: "unmet" };
  const { of, ...named } = objectOf(answer.condition, "condition");
  const party = of === "to" ? to : of && from;
  const condition = party === undefined ? named : { ...named, of: party };
  const state = plan ? checkCondition(condition, plan) : "unmet";
  return { answer: { ...answer, condition }, from, to, state };
}

function located(given: Answer, sides: readonly Side[]) {
  if (given.about === undefined) return { answer: given, concerned: sides };
  const { about, ...answer } = given;
  return { answer, concerned: sides.slice(about, about + 1) };
}

/** The gravity of a rule's answers if all that the plan does not say were met, and if none were. */
export function spanOf(standing: readonly Standing[]) {
  let [least, greatest] = [0, 0];
  for (const { answer, state } of standing) {
    if (state !== "met") greatest = Math.max(greatest, gravity[answer.weight]);
    if (state === "unmet") least = Math.max(least, gravity[answer.weight]);
  }
  return { least, greatest };
}
