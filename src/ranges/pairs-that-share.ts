import { checkedColumns } from "./checked-columns";
import type { RangeColumns } from "./columns";
import type { PartialRange } from "./range";

/** Two things whose ranges meet, by their places in the columns, the lower first, with what they share. */
export type SharingPair = readonly [first: number, second: number, shared: PartialRange];

/**
 * All pairs whose ranges meet, one after the other; ranges that only touch meet. No list of pairs is made, so that
 * hundreds of millions may pass.
 *
 * The ranges are sorted by their lower end, and each is compared with those after it until one begins past its upper
 * end: the time is that of sorting and of the pairs found, and none is lost on pairs that do not meet.
 *
 * @param columns - The ranges of all, as {@link rangeColumns} gives them.
 * @returns An iterator of pairs, those of the range that begins lowest first; run through it once. What two share is in the
 * unit of the axis, one-sided where neither states the other end.
 * @throws InvalidInputError for what are no columns.
 *
 * @example
 * ```ts
 * import { pairsThatShare, rangeColumns } from "vivary/ranges";
 *
 * const kept = (id: string, min: number, max: number) => ({ id, water: { pH: { value: { kept: { min, max } } } } });
 * const columns = rangeColumns([kept("tetra", 5, 6.5), kept("molly", 7.5, 8.5), kept("barb", 6, 8)], "water.pH");
 * [...pairsThatShare(columns)]; // => [[0, 2, { min: 6, max: 6.5 }], [1, 2, { min: 7.5, max: 8 }]]
 * ```
 */
export function pairsThatShare(columns: RangeColumns): IterableIterator<SharingPair> {
  return new Sweep(checkedColumns(columns));
}

/**
 * The sweep as an iterator. A generator would say the same in five lines and take three times as long: JavaScript engines
 * do not inline generators into the loop that runs them.
 */
class Sweep implements IterableIterator<SharingPair> {
  /** Places in the columns, by lower end. */
  readonly #order: Uint32Array;
  readonly #min: Float64Array;
  readonly #max: Float64Array;
  /** The range whose partners are being found, and the partner last looked at; places in the order. */
  #current = 0;
  #partner = 0;

  constructor({ min, max }: RangeColumns) {
    const order = Uint32Array.from(min.keys()).sort(
      (a, b) => (min[a] as number) - (min[b] as number) || a - b,
    );
    this.#order = order;
    this.#min = Float64Array.from(order, (place) => min[place] as number);
    this.#max = Float64Array.from(order, (place) => max[place] as number);
  }

  [Symbol.iterator](): this {
    return this;
  }

  next(): IteratorResult<SharingPair, undefined> {
    this.#partner += 1;
    if (!this.#meets() && !this.#advance()) return { done: true, value: undefined };
    return { done: false, value: this.#pair() };
  }

  /** Whether the partner begins within the current range. */
  #meets(): boolean {
    const { length } = this.#min;
    return (
      this.#partner < length && (this.#min[this.#partner] as number) <= (this.#max[this.#current] as number)
    );
  }

  /** Goes on to the next range that the one after it meets, if there is one. */
  #advance(): boolean {
    for (this.#current += 1; this.#current < this.#min.length; this.#current++) {
      this.#partner = this.#current + 1;
      if (this.#meets()) return true;
    }
    return false;
  }

  #pair(): SharingPair {
    const a = this.#order[this.#current] as number;
    const b = this.#order[this.#partner] as number;
    const min = this.#min[this.#partner] as number;
    const max = Math.min(this.#max[this.#current] as number, this.#max[this.#partner] as number);
    const shared = min > -Infinity && max < Infinity ? { min, max } : oneSided(min, max);
    return a < b ? [a, b, shared] : [b, a, shared];
  }
}

/** What is shared where neither of two ranges states one of the ends. */
const oneSided = (min: number, max: number): PartialRange => (max === Infinity ? { min } : { max });
