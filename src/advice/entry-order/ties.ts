import type { Planner } from "../../compatibility";
import { checkedPlan } from "../../plan/inner";
import { factAt } from "../../species";

/** What makes the place of groups in an order better or worse. */
export interface Ties {
  /** The groups that defend a place. */
  readonly defending: ReadonlySet<number>;
  /** Who may eat whom of another species. */
  readonly meals: readonly { readonly hunter: number; readonly prey: number }[];
  /** The groups that need plants that have grown in, or that harm plants. */
  readonly waitingForPlants: ReadonlySet<number>;
}

/** The ties between the groups of a plan. */
export function tiesOf({ plan, verdict }: Planner): Ties {
  const told = [...verdict.findings, ...verdict.met];
  const { parties } = checkedPlan(plan);
  const defending = parties.flatMap(({ species }, index) => {
    const territory = factAt(species, "space.territory")?.value;
    return territory === undefined || territory === "none" ? [] : [index];
  });
  const meals = told.flatMap(({ rule, from, to, watchFor }) =>
    rule === "predation" &&
    watchFor === "missing-animals" &&
    from !== undefined &&
    to !== undefined &&
    !areKin(plan.groups, from, to)
      ? [{ hunter: from, prey: to }]
      : [],
  );
  const waiting = told.flatMap(({ rule, from }) =>
    (rule === "plants" || rule === "plants-at-risk") && from !== undefined ? [from] : [],
  );
  return { defending: new Set(defending), meals, waitingForPlants: new Set(waiting) };
}

const areKin = (groups: Planner["plan"]["groups"], one: number, other: number) =>
  groups[one]?.species.id === groups[other]?.species.id;

/**
 * What is amiss where some groups come before the rest: how often one that defends a place comes before one that does
 * not, and how many hunters come before what they may eat.
 */
export function amissIn(
  { defending, meals }: Ties,
  groups: readonly number[],
  rest: readonly number[],
): readonly number[] {
  const defenders = groups.filter((group) => defending.has(group)).length;
  const peaceful = rest.filter((group) => !defending.has(group)).length;
  const early = meals.filter(({ hunter, prey }) => groups.includes(hunter) && rest.includes(prey));
  return [defenders * peaceful, early.length];
}
