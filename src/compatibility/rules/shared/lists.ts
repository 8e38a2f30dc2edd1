/** Whether two lists have something in common. What nobody stated counts as common. */
export function shareAny<Item>(
  mine: readonly Item[] | undefined,
  theirs: readonly Item[] | undefined,
): boolean {
  if (!mine || !theirs) return true;
  for (const item of mine) if (theirs.includes(item)) return true;
  return false;
}

/** Whether a list names nothing but one item; not where nobody stated it. */
export function isOnly<Item>(list: readonly Item[] | undefined, item: Item): boolean {
  if (!list) return false;
  for (const each of list) if (each !== item) return false;
  return true;
}
