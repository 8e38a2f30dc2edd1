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
  const found = [...(parsed.success ? [] : parsed.problems), ...sharesBeyondWhole(draft)];
  const problems = found.filter((problem) => !isLackOfAnimals(problem));
  if (problems.length > 0) return { is: "unreadable", problems };
  return parsed.success
    ? { is: "judged", plan: parsed.plan, verdict: assessPlan(parsed.plan) }
    : { is: "without animals" };
}

/** Whether all that is wrong is that nobody lives there yet. */
export const isLackOfAnimals = ({ path, found }: Problem): boolean => path.join() === "groups" && found === 0;

/** Shares of the tank that are more than the whole together: what is cover is not free to swim in. */
function sharesBeyondWhole({ tank: { cover, openWater } }: Draft): readonly Problem[] {
  if (!isShare(cover) || !isShare(openWater) || cover + openWater <= 1 + rounding) return [];
  return [{ path: sharePath, code: "conflict", expected: "what cover leaves, at most", found: openWater }];
}

/** Whether something is a share of the tank; what somebody typed may be anything. */
const isShare = (value: unknown): value is number => typeof value === "number" && value >= 0 && value <= 1;

/** What sums of shares may be off by. */
const rounding = 1e-9;

/** Where a problem with shares stands. */
const sharePath = ["tank", "openWater"];

/** Whether a problem is that shares are more than the whole. */
export const isBeyondWhole = ({ path, code }: Problem): boolean =>
  code === "conflict" && path.join() === sharePath.join();
