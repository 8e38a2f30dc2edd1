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
  if (parsed.success) return { is: "judged", plan: parsed.plan, verdict: assessPlan(parsed.plan) };
  const problems = parsed.problems.filter((problem) => !isLackOfAnimals(problem));
  return problems.length === 0 ? { is: "without animals" } : { is: "unreadable", problems };
}

/** Whether all that is wrong is that nobody lives there yet. */
export const isLackOfAnimals = ({ path, found }: Problem): boolean => path.join() === "groups" && found === 0;
