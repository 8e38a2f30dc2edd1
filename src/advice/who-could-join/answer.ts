import type { Finding, OpenQuestion, Outcome } from "../../compatibility";
import type { Condition, Wanted } from "../../plan";
import type { Said } from "./newcomer";

/** Whether a group may join, and what is said of it if so. */
export interface Answer {
  /** Why not; absent where it may. */
  readonly because?: Finding | OpenQuestion;
  /** What the plan with it comes to. */
  readonly outcome: Outcome;
  readonly said: readonly Said[];
  /** What concerns it, or no group in particular, and is met. */
  readonly met: readonly Condition[];
  /** What concerns it likewise, and is not met. */
  readonly unmet: readonly Condition[];
}

/** What is known of a plan that somebody may join. */
export interface Before {
  readonly outcome: Outcome;
  /** What those there ask of which it says otherwise. */
  readonly denied: readonly Condition[];
}

/** Whether a condition is on tank or water, which stay as they are: animals and food may come with a newcomer. */
export const isOfPlace = ({ on }: Condition): boolean => !on.startsWith("group.");

/** Whether a condition of which the plan says otherwise is on tank or water, and nobody there asks as much already. */
export const isNewlyDenied = (condition: Condition, { denied }: Before): boolean =>
  isOfPlace(condition) && !denied.some((known) => asksAsMuch(known, condition));

const asksAsMuch = (known: Condition, { on, of, wanted }: Condition): boolean =>
  known.on === on && known.of === of && liesWithin(known.wanted, wanted);
/** Whether all that the one wants is wanted by the other as well. */
function liesWithin(one: Wanted, other: Wanted): boolean {
  if ("oneOf" in one || "oneOf" in other)
    return "oneOf" in one && "oneOf" in other && one.oneOf.every((word) => other.oneOf.includes(word));
  const { min = Number.NEGATIVE_INFINITY, max = Number.POSITIVE_INFINITY } = other;
  return (one.min ?? Number.NEGATIVE_INFINITY) >= min && (one.max ?? Number.POSITIVE_INFINITY) <= max;
}

/** A plan works, with conditions that can be met at worst. */
export const isPromise = (outcome: Outcome) => outcome === "suitable" || outcome === "conditional";

/** Whether a plan that came to one outcome is no worse for coming to another, where it works at all. */
export const keeps = (before: Outcome, after: Outcome) =>
  isPromise(before) && (after === before || after === "suitable");

/** What can be told against a newcomer is graver than this where it speaks against it. */
export const mostBesides = (outcome: Outcome) => (outcome === "suitable" ? 0 : 1);

/** The first of the gravest, if it is graver than is passed over. */
export function gravest<Each>(
  all: readonly Each[],
  gravity: (each: Each) => number,
  passedOver: number,
): Each | undefined {
  let found: Each | undefined;
  let most = passedOver;
  for (const each of all) {
    const own = gravity(each);
    if (own > most) [found, most] = [each, own];
  }
  return found;
}
