import { filterCapacity } from "../../load";
import type { Plan } from "../../plan";
import { grownRationsOf, nitrogenOf, totalOf } from "../feeding-plan/rations";
import type { EntryNitrogen, EntryReason, EntryStep } from "./answer";
import type { JudgePrefix } from "./prefixes";
import { agedBy } from "./ripening";
import type { Dated } from "./schedule";
import type { Ties } from "./ties";

/** What is told of each step. */
export interface Telling {
  /** As it is once its animals have grown. */
  readonly plan: Plan;
  /** The groups that are there already. */
  readonly there: readonly number[];
  readonly prefix: JudgePrefix;
  readonly ties: Ties;
}

/** The steps of an order with their reasons and what they bring, those that are there already first. */
export function stepsTold(dated: readonly Dated[], telling: Telling): readonly EntryStep[] {
  const { there } = telling;
  const first: Dated = { day: 0, groups: there, because: [{ reason: "there-already" }] };
  const steps = there.length > 0 ? [first, ...dated] : dated;
  return steps.map(({ day, groups, because }, index) => {
    const before = steps.slice(0, index);
    const inside = sorted([...before.flatMap((step) => step.groups), ...groups]);
    const nitrogen = nitrogenOn(day, inside, telling.plan);
    return {
      day,
      groups,
      because: [...because, ...(index < steps.length - dated.length ? [] : places(groups, before, telling))],
      outcome: telling.prefix(inside).outcome,
      ...(nitrogen && { nitrogen }),
    };
  });
}

/** What gives some groups their place in the order, besides the days. */
function places(
  groups: readonly number[],
  before: readonly Dated[],
  { plan, prefix, ties: { defending, meals } }: Telling,
): readonly EntryReason[] {
  const inside = before.flatMap((step) => step.groups);
  const defends = groups.some((group) => defending.has(group));
  const eaten = meals.filter(({ hunter, prey }) => groups.includes(hunter) && inside.includes(prey));
  const species = new Set(groups.map((group) => plan.groups[group]?.species.id));
  return [
    ...needed(groups, before, prefix),
    ...(defends && inside.some((group) => !defending.has(group))
      ? [{ reason: "defends-place" } as const]
      : []),
    ...(eaten.length > 0
      ? [{ reason: "may-eat", groups: sorted(eaten.map(({ prey }) => prey)) } as const]
      : []),
    ...(species.size > 1 ? [{ reason: "together" } as const] : []),
  ];
}

/** The steps before without one of which the rules would have something against these. */
function needed(
  groups: readonly number[],
  before: readonly Dated[],
  prefix: JudgePrefix,
): readonly EntryReason[] {
  if (prefix(sorted(groups)).passes) return [];
  const missed = before.flatMap((step) => {
    const others = before.filter((other) => other !== step).flatMap((other) => other.groups);
    const already = others.length > 0 ? prefix(sorted(others)).rules : [];
    const rules = prefix(sorted([...others, ...groups])).rules.filter((rule) => !already.includes(rule));
    return rules.length > 0 ? [{ groups: step.groups, rules }] : [];
  });
  return missed.map(({ groups: others, rules }) => ({ reason: "others-first", groups: others, rules }));
}

/** What the groups that are in do to the water on a day, and the filter against it. */
function nitrogenOn(day: number, inside: readonly number[], plan: Plan): EntryNitrogen | undefined {
  const { filter } = plan.tank;
  const rations = grownRationsOf({ ...plan, groups: inside.flatMap((index) => plan.groups[index] ?? []) });
  if (rations.every((ration) => ration === undefined)) return undefined;
  return {
    given: nitrogenOf(totalOf(rations)),
    ...(filter && { filter: filterCapacity(agedBy(filter, day)) }),
  };
}

const sorted = (groups: readonly number[]) => [...groups].sort((one, other) => one - other);
