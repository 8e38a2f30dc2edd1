// Of what the shapes of a plan and of a party are made.
import { tempers } from "../choices";
import type { ObjectShape, Shape } from "./shape";

/** Yes or no. */
export const yesOrNo: Shape = { is: "yes-or-no" };
/** A number of animals, a million at most. */
export const count = (min: number): Shape => ({ is: "count", min, max: 1_000_000 });
/** A length of animals, none shorter than what has just hatched: a millimetre, common practice, no source. */
export const bodyLength: Shape = { is: "number", min: 0.1, max: 1000, unit: "cm" };
/** A name or an id. */
export const text: Shape = { is: "text", longest: 120 };
/** What individuals are like. */
export const temper: Shape = { is: "word", words: tempers };
/** One of some words. */
export const word = (words: readonly string[]): Shape => ({ is: "word", words });
/** An object with the fields of its type and no others. */
export const object = <Held = Readonly<Record<string, unknown>>>(
  fields: Readonly<Record<keyof Held & string, Shape>>,
  required: readonly (keyof Held & string)[] = [],
): ObjectShape => ({ is: "object", fields, required });
