import type { Range } from "../ranges";
import type { AdultLength, Sex } from "../species";

/** A total length that is told of one sex, or of both where nobody tells them apart, in cm. */
export interface TotalLength extends Range {
  /** Whether it is asked for one sex and nobody said of which it is. */
  readonly ofEither: boolean;
}

/**
 * The total length that is meant, of the sex itself where it is stated and of measured totals where there are any: from
 * the least to the greatest of them; undefined where none is.
 */
export function totalOf(
  lengths: readonly AdultLength[],
  as: AdultLength["as"],
  sex: Sex | undefined,
): TotalLength | undefined {
  const meant = lengths.filter((length) => length.as === as);
  const own = preferred(meant, (length) => length.sex === sex);
  const totals = preferred(own, ({ total }) => total.min === total.max).map(({ total }) => total);
  if (totals.length === 0) return undefined;
  return {
    min: Math.min(...totals.map(({ min }) => min)),
    max: Math.max(...totals.map(({ max }) => max)),
    ofEither: own.every((length) => length.sex !== sex),
  };
}

/**
 * The lengths measured as that is which is told first, the usual one of the sex if there is one: a disc and a total are of one
 * animal, and stand on no axis together.
 */
export function measuredAlike(
  lengths: readonly AdultLength[],
  sex: Sex | undefined,
): readonly [lengths: readonly AdultLength[], measure: AdultLength["measure"] | undefined] {
  const own = [...lengths.filter((length) => length.sex === sex), ...lengths];
  const { measure } = own.find(({ as }) => as === "usual") ?? own[0] ?? {};
  return [lengths.filter((length) => (length.measure === "disc") === (measure === "disc")), measure];
}

function preferred<Item>(items: readonly Item[], wanted: (item: Item) => boolean): readonly Item[] {
  const found = items.filter(wanted);
  return found.length > 0 ? found : items;
}
