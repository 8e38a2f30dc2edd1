/** Whether two lists have something in common. What nobody stated counts as common. */
export function shareAny<Item>(
  mine: readonly Item[] | undefined,
  theirs: readonly Item[] | undefined,
): boolean {
  if (!mine || !theirs) return true;
  for (const item of mine) if (theirs.includes(item)) return true;
  return false;
}
