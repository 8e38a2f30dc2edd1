import type { Planner } from "../../compatibility";
import type { NoEntryOrder } from "./answer";
import { type Comers, groupsOf } from "./comers";
import type { Growing } from "./growing";
import type { JudgePrefix } from "./prefixes";
import type { Found } from "./search";

/** Nobody moves into a tank that is wrong for the animals. */
export function refusedWhole({ outcome, plan, verdict }: Planner): NoEntryOrder | undefined {
  if (outcome !== "unsuitable") return undefined;
  const blocking = verdict.findings.filter(({ weight }) => weight === "blocking");
  return { reason: "unsuitable", groups: [...plan.groups.keys()], rules: rulesOf(blocking) };
}

/** Nobody comes to those that would harm them until they are longer, nor can each be there first. */
export function refusedGrowth(
  growing: readonly Growing[],
  comers: readonly Comers[],
): NoEntryOrder | undefined {
  const at = (group: number) => comers.find(({ groups }) => groups.includes(group));
  const late = growing.filter(({ group, before }) => at(before)?.areThere && !at(group)?.areThere);
  if (late.length > 0) return { reason: "others-there", ...whom(late) };
  const open = growing.filter(({ before }) => !at(before)?.areThere);
  const circle = inCircles(open, (one, other) => at(one.before) === at(other.group));
  return circle.length > 0 ? { reason: "both-grow-first", ...whom(circle) } : undefined;
}

/** Those of whom each is waited for by another that waits too. */
function inCircles(
  growing: readonly Growing[],
  follows: (one: Growing, other: Growing) => boolean,
): readonly Growing[] {
  const left = growing.filter(
    (one) => growing.some((other) => follows(one, other)) && growing.some((other) => follows(other, one)),
  );
  return left.length === growing.length ? left : inCircles(left, follows);
}

const whom = (growing: readonly Growing[]) => ({
  groups: sorted(growing.map(({ group }) => group)),
  rules: rulesOf(growing),
});

/** What is known where the search found no order. */
export interface Unordered {
  readonly there: readonly Comers[];
  readonly coming: readonly Comers[];
  readonly prefix: JudgePrefix;
}

/** Who cannot come next where the search got furthest, and what speaks against it. */
export function refusedBefore(
  { furthest, isComplete }: Found,
  { there, coming, prefix }: Unordered,
): NoEntryOrder {
  const inside = groupsOf([...there, ...furthest.flatMap((index) => coming[index] ?? [])]);
  const left = coming.filter((_, index) => !furthest.includes(index));
  const rules = left.flatMap(({ groups }) => prefix(sorted([...inside, ...groups])).rules);
  return {
    reason: isComplete ? "worse-before" : "not-found",
    groups: groupsOf(left),
    rules: [...new Set(rules)],
  };
}

const rulesOf = (named: readonly { readonly rule: string }[]) => [...new Set(named.map(({ rule }) => rule))];

const sorted = (groups: readonly number[]) => [...new Set(groups)].sort((one, other) => one - other);
