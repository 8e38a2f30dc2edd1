import { InvalidInputError, objectOf, type Problem } from "../errors";
import type { Group, Offering, Plan, PlannedTank, PlannedWater } from "../plan";

/** What is to be different in a plan. */
export interface PlanChange {
  /** Fields of the tank, each replaced whole; `undefined` takes one away. */
  readonly tank?: Changed<PlannedTank> | undefined;
  /** Fields of the water; `undefined` takes one away. */
  readonly water?: Changed<PlannedWater> | undefined;
  /** What is fed, in place of what was; `undefined` takes it away. */
  readonly offerings?: readonly Offering[] | undefined;
  /** By index the fields of a group that are different, or `null` to take it out; later ones move up. */
  readonly groups?: { readonly [index: number]: Changed<Group> | null } | undefined;
  /** Groups that come in, after those that are there. */
  readonly add?: readonly Group[] | undefined;
}

/** Some fields of something, each as it is to be; `undefined` takes one away. */
export type Changed<Whole> = { readonly [Field in keyof Whole]?: Whole[Field] | undefined };

const parts = ["tank", "water", "offerings", "groups", "add"];

/**
 * A plan with a change made to it. What comes out is not checked yet.
 *
 * @throws InvalidInputError for what is no change: a part that no plan has, a group that is not there.
 */
export function withChange(plan: Plan, change: PlanChange): Plan {
  const problems = changeProblems(plan, change);
  if (problems.length > 0) throw new InvalidInputError(problems);
  const { tank, water, groups = {}, add = [] } = change;
  const isOfGroups = Object.keys(groups).length + add.length > 0;
  return merged(plan, {
    ...(tank && { tank: merged(plan.tank, tank) }),
    ...(water && { water: merged(plan.water ?? {}, water) }),
    ...("offerings" in change && { offerings: change.offerings }),
    ...(isOfGroups && { groups: [...changedGroups(plan.groups, groups), ...add] }),
  });
}

/** The groups, those as they were that stay as they are. */
const changedGroups = (groups: readonly Group[], changes: NonNullable<PlanChange["groups"]>) =>
  groups.flatMap((group, index) => {
    const different = changes[index];
    return different === null ? [] : [different ? merged(group, different) : group];
  });

/** The fields of one, with those of the other in their place; what is undefined there is taken away. */
function merged<Whole extends object>(whole: Whole, different: Changed<Whole>): Whole {
  const fields = Object.entries({ ...whole, ...different }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(fields) as Whole;
}

function changeProblems(plan: Plan, change: PlanChange): readonly Problem[] {
  const { groups = {}, add = [], ...others } = objectOf(change, "change");
  const strange = Object.keys(change).filter((part) => !parts.includes(part));
  const missing = Object.keys(objectOf(groups, "change.groups")).filter(
    (index) => !Object.hasOwn(plan.groups, index),
  );
  return [
    ...strange.map((part): Problem => problem([part], "unknown-key", `one of ${parts.join(", ")}`, part)),
    ...missing.map((index) =>
      problem(["groups", index], "range", `one of ${plan.groups.length} groups`, index),
    ),
    ...(Array.isArray(add) ? [] : [problem(["add"], "type", "a list of groups", add)]),
    ...[others.tank, others.water].flatMap((part, index) =>
      part === undefined || (typeof part === "object" && part !== null)
        ? []
        : [problem([parts[index] ?? ""], "type", "fields that are different", part)],
    ),
  ];
}

const problem = (
  path: readonly (string | number)[],
  code: Problem["code"],
  expected: string,
  found: unknown,
): Problem => ({ path: ["change", ...path], code, expected, found });
