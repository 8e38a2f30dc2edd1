import type { Finding } from "../../compatibility";

type Several<Item> = readonly [Item, ...Item[]];

/** Findings that differ only in the parties they are about; at least one. */
export type Alike = Several<Finding>;

/** Items by what they are alike in: those of one key are told together. */
export function alikeIn<Item>(
  items: readonly Item[],
  keyOf: (item: Item) => unknown,
): readonly Several<Item>[] {
  const alike = new Map<string, [Item, ...Item[]]>();
  for (const item of items) {
    const key = JSON.stringify(keyOf(item));
    const known = alike.get(key);
    if (known) known.push(item);
    else alike.set(key, [item]);
  }
  return [...alike.values()];
}
