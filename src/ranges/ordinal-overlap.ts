import { listOf, objectOf, oneOf } from "../checks";
import { refusal } from "../errors";
import type { Range } from "./range";

/** A range over an ordered list of classes, such as still < gentle < moderate < strong; both ends included. */
export interface OrdinalRange<C extends string> {
  /** The lowest class. */
  readonly min: C;
  /** The highest class, `min` or after it. */
  readonly max: C;
}

/** An ordinal range that may be one-sided: an absent end reaches to the end of the list. At least one is present. */
export interface PartialOrdinalRange<C extends string> {
  /** The lowest class, if stated. */
  readonly min?: C | undefined;
  /** The highest class, if stated, `min` or after it. */
  readonly max?: C | undefined;
}

/**
 * What two ranges over one ordered list of classes share.
 *
 * @param order All classes, the lowest first, none twice.
 * @param a A range of these classes.
 * @param b A range of these classes.
 * @returns The shared range, both ends stated; `undefined` if no class lies in both.
 * @throws InvalidInputError if a class is no text or listed twice, or a range is reversed, states no end or an
 * unlisted class.
 *
 * @example
 * ```ts
 * import { ordinalOverlap } from "vivary/ranges";
 *
 * const flow = ["still", "gentle", "moderate", "strong"] as const;
 * ordinalOverlap(flow, { min: "still", max: "moderate" }, { min: "gentle" }); // => { min: "gentle", max: "moderate" }
 * ordinalOverlap(flow, { max: "gentle" }, { min: "moderate" }); // => undefined
 * ```
 */
export function ordinalOverlap<C extends string>(
  order: readonly C[],
  a: PartialOrdinalRange<NoInfer<C>>,
  b: PartialOrdinalRange<NoInfer<C>>,
): OrdinalRange<C> | undefined {
  checkOrder(order);
  const first = placesOf(order, a, "a");
  const second = placesOf(order, b, "b");
  const [lowest, highest] = [Math.max(first.min, second.min), Math.min(first.max, second.max)];
  const [min, max] = [order[lowest], order[highest]];
  return lowest > highest || min === undefined || max === undefined ? undefined : { min, max };
}

function checkOrder(order: readonly string[]): void {
  for (const [index, item] of listOf(order, "order").entries()) {
    if (typeof item !== "string") throw refusal(`order[${index}]`, "the name of a class", item);
  }
  if (new Set(order).size < order.length) throw refusal("order", "no class listed twice", order, "conflict");
}

/** The places in the order, from 0, of the lowest and the highest class of a range. */
function placesOf(order: readonly string[], range: PartialOrdinalRange<string>, subject: string): Range {
  const { min, max } = objectOf(range, subject, "a range { min, max }");
  if (min === undefined && max === undefined) throw refusal(subject, "a range with a min or a max", range);
  const first = min === undefined ? 0 : order.indexOf(oneOf(min, order, `${subject}.min`));
  const last = max === undefined ? order.length - 1 : order.indexOf(oneOf(max, order, `${subject}.max`));
  if (first > last) throw refusal(subject, "min at most max", range, "range");
  return { min: first, max: last };
}
