/** A closed interval, both ends included. Its unit is that of the context; ranges compared share one unit. */
export interface Range {
  /** The lower end. */
  readonly min: number;
  /** The upper end, no less than `min`. */
  readonly max: number;
}

/** A range that may be one-sided: an absent end bounds nothing. At least one end is present. */
export interface PartialRange {
  /** The lower end, if there is one. */
  readonly min?: number | undefined;
  /** The upper end, if there is one, no less than `min`. */
  readonly max?: number | undefined;
}
