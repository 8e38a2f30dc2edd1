import type { Changed, PlanChange } from "../../compatibility";
import type { Plan } from "../../plan";

/** What turns one plan into another that has its groups, and perhaps more after them. */
export function changeBetween(before: Plan, after: Plan): PlanChange {
  const [tank, water] = [
    different(before.tank, after.tank),
    different(before.water ?? {}, after.water ?? {}),
  ];
  const groups = before.groups.flatMap((group, index) => {
    const changed = different(group, after.groups[index] ?? group);
    return changed ? [[index, changed] as const] : [];
  });
  const add = after.groups.slice(before.groups.length);
  return {
    ...(tank && { tank }),
    ...(water && { water }),
    ...(isSame(before.offerings, after.offerings) ? {} : { offerings: after.offerings }),
    ...(groups.length > 0 && { groups: Object.fromEntries(groups) }),
    ...(add.length > 0 && { add }),
  };
}

/** The fields that are different, each as it is afterwards; undefined where none is. */
function different<Whole extends object>(before: Whole, after: Whole): Changed<Whole> | undefined {
  const names = Object.keys({ ...before, ...after }) as (keyof Whole)[];
  const changed = names.filter((name) => !isSame(before[name], after[name]));
  if (changed.length === 0) return undefined;
  return Object.fromEntries(changed.map((name) => [name, after[name]])) as Changed<Whole>;
}

const isSame = (one: unknown, other: unknown) =>
  one === other || JSON.stringify(one) === JSON.stringify(other);
