/** Whether two lists have something in common. What nobody stated counts as common. */
export function shareAny<Item>(
  mine: readonly Item[] | undefined,
  theirs: readonly Item[] | undefined,
): boolean {
  return !mine || !theirs || mine.some((item) => theirs.includes(item));
}
