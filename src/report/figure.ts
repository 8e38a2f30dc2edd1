/** A number, or a range with one end or two, in a canonical unit. */
export interface Figure {
  readonly value?: number | undefined;
  /** The width that belongs to a length; both are told as whole numbers, rounded up where the length is the least. */
  readonly by?: number | undefined;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  readonly unit?: string | undefined;
}

/** The number that a figure is, if it is no range. */
export const numberOf = (figure: Figure | undefined): number | undefined => figure?.value;
