import { ends } from "./ends";
import type { PartialRange } from "./range";

/** The widths of two ranges and of what they share, or `undefined` if either is one-sided and has no width. */
export function widths(a: PartialRange, b: PartialRange) {
  const first = ends(a, "a");
  const second = ends(b, "b");
  const shared = Math.min(first.max, second.max) - Math.max(first.min, second.min);
  const all = { a: first.max - first.min, b: second.max - second.min, shared: Math.max(0, shared) };
  return Number.isFinite(all.a + all.b) ? all : undefined;
}
