/** A number, or a range with one end or two, in a canonical unit. */
export interface Figure {
  readonly value?: number | undefined;
  /** The width that belongs to a length; both are told as whole numbers, rounded up where the length is the least. */
  readonly by?: number | undefined;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  /** Whether it is a span to stay within: its ends are rounded inwards, as those of a range with one end are. */
  readonly within?: boolean | undefined;
  /** Whether it is the least that will do, told as a plain number: that is rounded up. */
  readonly up?: boolean | undefined;
  /** Whether it is the most that will do, told as a plain number: that is rounded down. */
  readonly down?: boolean | undefined;
  readonly unit?: string | undefined;
}

/**
 * Writes a figure with its unit: `24 °C`, `at least 80 cm`, `6 to 8`; empty where there is none. Where it would read like
 * another beside which it stands, and is not the same, both are told more closely: `73.4 °F` beside `73.2 °F`.
 */
export type WriteQuantity = (figure: Figure | undefined, beside?: Figure) => string;

/** A figure as the least that will do, of which no unit may cut anything off. */
export const noLess = (figure: Figure): Figure => ({ ...figure, up: true });

/** A figure as the most that will do, to which no unit may add anything. */
export const noMore = (figure: Figure): Figure => ({ ...figure, down: true });

/** A span as one to stay within, past whose ends no unit may lead. */
export const within = <Span extends object>(span: Span): Span & { readonly within: true } => ({
  ...span,
  within: true,
});

/** The number that a figure is, if it is no range. */
export const numberOf = (figure: Figure | undefined): number | undefined => figure?.value;
