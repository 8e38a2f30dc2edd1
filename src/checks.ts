// Arguments as functions take them: each check gives back what it was given, or throws.
import { type DomainUnit, OutsideDomainError, refusal } from "./errors";
import { isObject } from "./is-object";

/** The number itself, or an {@link InvalidInputError} where it is none or not finite. */
export function finite(value: unknown, subject: string): number {
  if (typeof value === "number" && Number.isFinite(value)) return value;
  throw refusal(subject, "a finite number", value);
}

/** The number itself, or an {@link InvalidInputError} where it is not finite or not above zero. */
export function positive(value: unknown, subject: string): number {
  if (finite(value, subject) > 0) return value as number;
  throw refusal(subject, "a number above zero", value, "range");
}

/** The number itself, or an {@link InvalidInputError} where it is not finite or below zero. */
export function notNegative(value: unknown, subject: string): number {
  const number = finite(value, subject);
  if (number >= 0) return number;
  throw refusal(subject, "a number of 0 or more", value, "range");
}

/** The number itself, or an {@link InvalidInputError} where it is no whole number from 1 to the most. */
export function wholeNumber(value: number, subject: string, most = Number.POSITIVE_INFINITY): number {
  if (Number.isInteger(value) && value >= 1 && value <= most) return value;
  const span = most === Number.POSITIVE_INFINITY ? "of 1 or more" : `from 1 to ${most}`;
  throw refusal(subject, `a whole number ${span}`, value, "range");
}

/** The number itself if the equation holds there, or an {@link OutsideDomainError}. */
export function inDomain(
  value: unknown,
  subject: string,
  domain: { readonly min: number; readonly max: number },
  unit?: DomainUnit,
): number {
  const number = finite(value, subject);
  if (number < domain.min || number > domain.max) throw new OutsideDomainError(subject, domain, number, unit);
  return number;
}

/** The object itself, or an {@link InvalidInputError} where it is none with fields. */
export function objectOf<Given>(value: Given, subject: string, expected = "a plain object"): Given {
  if (isObject(value)) return value;
  throw refusal(subject, expected, value);
}

/** Refuses what is left of what was given once all that a function reads is taken out: a misspelt field would say nothing. */
export function refuseOthers(others: Readonly<Record<string, undefined>>, within = "options"): void {
  for (const [name, value] of Object.entries<unknown>(others))
    if (value !== undefined)
      throw refusal(`${within}.${name}`, "a field that this function reads", name, "unknown-key");
}

/** The list itself, or an {@link InvalidInputError} where it is none. */
export function listOf<Given>(value: readonly Given[], subject: string): readonly Given[] {
  if (Array.isArray(value)) return value;
  throw refusal(subject, "a list", value);
}

/** The word itself, or an {@link InvalidInputError} where it is none of those known. */
export function oneOf<Word extends string>(value: Word, words: readonly string[], subject: string): Word {
  if (words.includes(value)) return value;
  throw refusal(subject, `one of ${words.join(", ")}`, value, "word");
}
