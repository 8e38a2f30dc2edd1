/**
 * Items, of those that say the same as data the first.
 *
 * @param saying - What of an item has to differ; all of it if absent.
 */
export function distinct<Item>(
  items: readonly Item[],
  saying: (item: Item) => unknown = (item) => item,
): readonly Item[] {
  if (items.length < 2) return items;
  const said = new Set<string>();
  return items.filter((item) => {
    const text = JSON.stringify(saying(item));
    return !said.has(text) && said.add(text);
  });
}
