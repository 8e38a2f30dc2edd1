import { objectOf } from "../../checks";
import { InvalidInputError, type Problem } from "../../errors";
import { isObject } from "../../is-object";
import type { Group, Lawgiver, Offering, Plan, PlannedTank, PlannedWater } from "../../plan";

/** What is to be different in a plan. */
export interface PlanChange {
  /** Fields of the tank, each replaced whole; `undefined` takes one away. */
  readonly tank?: Changed<PlannedTank> | undefined;
  /** Fields of the water; `undefined` takes one away. */
  readonly water?: Changed<PlannedWater> | undefined;
  /** What is fed, in place of what was; `undefined` takes it away. */
  readonly offerings?: readonly Offering[] | undefined;
  /** Where the tank stands, in place of what was said; `undefined` takes it away. */
  readonly jurisdiction?: readonly Lawgiver[] | undefined;
  /**
   * By index the fields of a group that are different, or `null` to take it out; later ones move up: `{ 0: { males: 2 } }`,
   * no list of groups. A form that is applied to the profile, as `findSpecies` gives it, goes or becomes another only with
   * another `species`.
   */
  readonly groups?: ChangedGroups | undefined;
  /** Groups that come in, after those that are there. */
  readonly add?: readonly Group[] | undefined;
}

/** What is different of some groups, by index. */
export interface ChangedGroups {
  readonly [index: number]: Changed<Group> | null;
  /** What has a length is a list. */
  readonly length?: never;
}

/** Some fields of something, each as it is to be; `undefined` takes one away. */
export type Changed<Whole> = { readonly [Field in keyof Whole]?: Whole[Field] | undefined };

const parts = ["tank", "water", "offerings", "jurisdiction", "groups", "add"];

/**
 * A plan with a change made to it. What comes out is not checked yet.
 *
 * @throws InvalidInputError for what is no change: a part that no plan has, a group that is not there, a form to be taken
 * away that the profile has applied.
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
    ...("jurisdiction" in change && { jurisdiction: change.jurisdiction }),
    ...(isOfGroups && { groups: [...changedGroups(plan.groups, groups), ...add] }),
  });
}

/** The groups, those as they were that stay as they are. */
const changedGroups = (groups: readonly Group[], changes: ChangedGroups) =>
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
  const { tank = {}, water = {}, groups = {}, add = [] } = objectOf(change, "change");
  const strange = Object.keys(change).filter((part) => !parts.includes(part));
  return [
    ...strange.map((part): Problem => problem([part], "unknown-key", `one of ${parts.join(", ")}`, part)),
    ...fieldProblems("tank", tank),
    ...fieldProblems("water", water),
    ...groupProblems(plan.groups, groups),
    ...(Array.isArray(add) ? [] : [problem(["add"], "type", "a list of groups", add)]),
  ];
}

function groupProblems(groups: readonly Group[], changes: ChangedGroups): readonly Problem[] {
  if (!isObject(changes)) {
    const expected =
      "by index what is different of a group, such as { 0: { males: 2 } }; new groups as `add`";
    return [problem(["groups"], "type", expected, changes)];
  }
  return Object.entries(changes).flatMap(([index, different]) => {
    const path = ["groups", index];
    const group = groups[Number(index)];
    if (!group || !Object.keys(groups).includes(index)) {
      return [problem(path, "range", `one of ${groups.length} groups`, index)];
    }
    if (different === null) return [];
    return isObject(different)
      ? formProblems(path, group, different)
      : [problem(path, "type", "fields that are different, or null to take it out", different)];
  });
}

/** A form is not taken away that the profile has applied. */
function formProblems(path: Path, { species: { form } }: Group, different: object): readonly Problem[] {
  const isTakenAway = "form" in different && different.form === undefined;
  if (form === undefined || !isTakenAway || "species" in different) return [];
  const expected = `another species: the profile has the form ${form} applied`;
  return [problem([...path, "form"], "conflict", expected, undefined)];
}

const fieldProblems = (part: string, fields: unknown): readonly Problem[] =>
  isObject(fields) ? [] : [problem([part], "type", "fields that are different", fields)];

type Path = readonly (string | number)[];

const problem = (path: Path, code: Problem["code"], expected: string, found: unknown): Problem => ({
  path: ["change", ...path],
  code,
  expected,
  found,
});
