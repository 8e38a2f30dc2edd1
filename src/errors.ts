/**
 * An argument that no answer can be given for: a number that is not finite, a reversed range, an unknown
 * unit, id or form, a size of zero or less, a count that is no whole number.
 */
export class InvalidInputError extends Error {
  override readonly name: string = "InvalidInputError";

  constructor(
    /** What was wrong, as a path: `tank.base.length`. */
    readonly subject: string,
    /** What would have been accepted. */
    readonly expected: string,
    /** What came. */
    readonly found: unknown,
  ) {
    super(
      `${subject}: expected ${expected}, found ${typeof found === "object" ? "an object" : String(found)}`,
    );
  }
}

/** A value outside the range in which an equation holds. A `RangeError` that names the range. */
export class OutsideDomainError extends RangeError {
  override readonly name: string = "OutsideDomainError";

  constructor(
    /** Which variable left the range of validity. */
    readonly subject: string,
    /** The range of validity, both ends included. */
    readonly domain: { readonly min: number; readonly max: number },
    /** What came. */
    readonly found: number,
    /** The unit of the range and of what came; empty for a pure number. */
    readonly unit: string = "",
  ) {
    const symbol = unit && ` ${unit}`;
    super(`${subject}: holds from ${domain.min} to ${domain.max}${symbol}, found ${found}${symbol}`);
  }
}

/** The number itself, or an {@link InvalidInputError} where it is none or not finite. */
export function finite(value: unknown, subject: string): number {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  throw new InvalidInputError(subject, "a finite number", value);
}

/** The number itself, or an {@link InvalidInputError} where it is not finite or not above zero. */
export function positive(value: unknown, subject: string): number {
  if (finite(value, subject) > 0) return value as number;
  throw new InvalidInputError(subject, "a number above zero", value);
}

/** The number itself if the equation holds there, or an {@link OutsideDomainError}. */
export function within(
  value: unknown,
  subject: string,
  domain: { readonly min: number; readonly max: number },
  unit?: string,
): number {
  const number = finite(value, subject);
  if (number < domain.min || number > domain.max) throw new OutsideDomainError(subject, domain, number, unit);
  return number;
}

/** The number itself, or an {@link OutsideDomainError} where it is below zero. */
export function amount(value: unknown, subject: string, unit: string): number {
  return within(value, subject, { min: 0, max: Number.POSITIVE_INFINITY }, unit);
}

/** The object itself, or an {@link InvalidInputError} where it is none. */
export function objectOf<Given>(value: Given, subject: string): Given {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) return value;
  throw new InvalidInputError(subject, "an object", value);
}

/** The word itself, or an {@link InvalidInputError} where it is none of those known. */
export function oneOf<Word extends string>(value: Word, words: readonly string[], subject: string): Word {
  if (words.includes(value)) return value;
  throw new InvalidInputError(subject, `one of ${words.join(", ")}`, value);
}

/** The number itself, or an {@link InvalidInputError} where it is no whole number of at least `least`. */
export function whole(value: unknown, subject: string, least: number): number {
  if (Number.isInteger(value) && (value as number) >= least) return value as number;
  throw new InvalidInputError(subject, `a whole number of at least ${least}`, value);
}
