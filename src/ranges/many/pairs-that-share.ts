import type { PartialRange } from "../range";
import { checkedColumns } from "./checked-columns";
import type { RangeColumns } from "./columns";

/** Two things whose ranges meet, by their places in the columns, the lower first, with what they share. */
type SharingPair = readonly [first: number, second: number, shared: PartialRange];

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
 * @throws InvalidInputError for what are no columns, and where one of their ranges is reversed or has an end that is no
 * number.
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
export function pairsThatShare(
  columns: RangeColumns,
): IterableIterator<readonly [first: number, second: number, shared: PartialRange]> {
  return new Sweep(checkedColumns(columns));
}

/**
 * The sweep as an iterator. A generator would say the same in five lines and take some times as long: engines do not take
 * generators apart into the loop that runs them.
 */
class Sweep implements IterableIterator<SharingPair> {
  /** Places in the columns, by lower end; the ends in the same order. */
  readonly #order: Uint32Array;
  readonly #min: Float64Array;
  readonly #max: Float64Array;
  /** The range whose partners come, the next of them, and where they end; places in the order. */
  #current = -1;
  #partner = 0;
  #end = 0;

  constructor({ min, max }: RangeColumns) {
    this.#order = Uint32Array.from(min.keys()).sort(
      (a, b) => (min[a] as number) - (min[b] as number) || a - b,
    );
    this.#min = Float64Array.from(this.#order, (place) => min[place] as number);
    this.#max = Float64Array.from(this.#order, (place) => max[place] as number);
  }

  [Symbol.iterator](): this {
    return this;
  }

  next(): IteratorResult<SharingPair, undefined> {
    while (this.#partner === this.#end) {
      if (this.#current + 1 >= this.#min.length) return { done: true, value: undefined };
      this.#advance();
    }
    const value = this.#pair(this.#partner);
    this.#partner += 1;
    return { done: false, value };
  }

  /** Goes on to the next range: its partners are those after it that begin within it. */
  #advance(): void {
    this.#current += 1;
    this.#partner = this.#current + 1;
    this.#end = this.#partner;
    const top = this.#max[this.#current] as number;
    while (this.#end < this.#min.length && (this.#min[this.#end] as number) <= top) this.#end += 1;
  }

  #pair(partner: number): SharingPair {
    const a = this.#order[this.#current] as number;
    const b = this.#order[partner] as number;
    const min = this.#min[partner] as number;
    const max = Math.min(this.#max[this.#current] as number, this.#max[partner] as number);
    const shared = min > -Infinity && max < Infinity ? { min, max } : oneSided(min, max);
    return [Math.min(a, b), Math.max(a, b), shared];
  }
}

/** What is shared where neither of two ranges states one of the ends. */
const oneSided = (min: number, max: number): PartialRange => (max === Infinity ? { min } : { max });
