import { refusal } from "../errors";
import type { AdultLength, Sex } from "./types";

/**
 * The lengths stated for a sex or for both; all of them where none is.
 *
 * @throws InvalidInputError if there are none at all.
 */
export function lengthsOfSex(lengths: readonly AdultLength[], sex: Sex | undefined): readonly AdultLength[] {
  if (lengths.length === 0) throw refusal("size.adultLength", "at least one length", lengths);
  return preferred(lengths, (length) => !sex || !length.sex || length.sex === sex);
}

/** The lengths with the meaning wanted; all of them where none has it. */
export function lengthsMeant(lengths: readonly AdultLength[], as: AdultLength["as"]): readonly AdultLength[] {
  return preferred(lengths, (length) => length.as === as);
}

function preferred(lengths: readonly AdultLength[], wanted: (length: AdultLength) => boolean) {
  const found = lengths.filter(wanted);
  return found.length > 0 ? found : lengths;
}
