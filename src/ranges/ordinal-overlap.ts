import { refusal } from "../errors";

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
 * @throws InvalidInputError if a class is listed twice, or a range is reversed, states no end or an unlisted class.
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
  if (new Set(order).size < order.length) {
    throw refusal("order", "no class listed twice", order);
  }
  const others = classesOf(order, b, "b");
  const shared = classesOf(order, a, "a").filter((item) => others.includes(item));
  const min = shared[0];
  const max = shared.at(-1);
  return min === undefined || max === undefined ? undefined : { min, max };
}

function classesOf<C extends string>(
  order: readonly C[],
  range: PartialOrdinalRange<C>,
  subject: string,
): readonly C[] {
  const { min, max } = range ?? {};
  const first = min === undefined ? 0 : order.indexOf(min);
  const last = max === undefined ? order.length - 1 : order.indexOf(max);
  const stated = min !== undefined || max !== undefined;
  if (stated && first >= 0 && first <= last) return order.slice(first, last + 1);
  throw refusal(subject, `classes of ${order.join(" < ")}, min at most max`, `${min} to ${max}`);
}
