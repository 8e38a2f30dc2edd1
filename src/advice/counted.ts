import type { Group } from "../plan";

const sorts = ["males", "females", "unsexed", "juveniles"] as const;

/** A group of so many animals: those of the sort of which there are most come in or go first. */
export function counted(group: Group, count: number): Partial<Group> {
  const numbers = sorts.map((sort) => ({ sort, number: group[sort] ?? 0 }));
  const byMost = [...numbers].sort((one, other) => other.number - one.number);
  let more = count - numbers.reduce((sum, { number }) => sum + number, 0);
  const changed = byMost.map(({ sort, number }): readonly [string, number] => {
    const now = Math.max(number + more, 0);
    more -= now - number;
    return [sort, now];
  });
  return Object.fromEntries(changed.filter(([sort, number]) => number !== (group[sort as "males"] ?? 0)));
}
