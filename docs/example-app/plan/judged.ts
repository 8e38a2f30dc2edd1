import type { Problem } from "vivary";
import { assessPlan, type Verdict } from "vivary/compatibility";
import { type Plan, safeParsePlan } from "vivary/plan";
import type { Draft } from "./draft";
import { profileOf } from "./profiles";

/** What can be said of a draft. */
export type Judged =
  | { readonly is: "judged"; readonly plan: Plan; readonly verdict: Verdict }
  | { readonly is: "without animals" }
  | { readonly is: "unreadable"; readonly problems: readonly Problem[] };

/** Judges a draft whose species are loaded. */
export function judged(draft: Draft): Judged {
  const parsed = safeParsePlan(draft, profileOf);
  const problems = parsed.success ? [] : parsed.problems.filter((problem) => !isLackOfAnimals(problem));
  if (problems.length > 0) return { is: "unreadable", problems };
  return parsed.success
    ? { is: "judged", plan: parsed.plan, verdict: assessPlan(parsed.plan) }
    : { is: "without animals" };
}

/** Whether all that is wrong is that nobody lives there yet. */
export const isLackOfAnimals = ({ path, found }: Problem): boolean => path.join() === "groups" && found === 0;

/** Whether a problem is that shares are more than the whole. */
export const isBeyondWhole = ({ path, code }: Problem): boolean =>
  code === "conflict" && path.join() === "tank,openWater";
