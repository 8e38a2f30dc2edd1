import { finite, listOf, oneOf, positive } from "../../checks";
import { decimal } from "../../decimal";
import { refusal } from "../../errors";
import { lengthMeaning, lengthMeasure, sex as sexes } from "../traits/class-lists";
import type { LengthMeasure, Sex } from "../traits/class-names";
import { plausibleShare } from "../traits/plausible";
import type { AdultLength } from "./profile";

/**
 * Standard length as a share of total length, least and greatest, of fishes with a tail fin of common size.
 * FishBase's default ratio of total to standard length, 1.22, is a share of 0.82; the span around it is from memory.
 */
const standardShare = { min: 0.8, max: 0.85 } as const;

/**
 * Total length in cm of a fish measured as stated, in cm: a span where that was another measure or unstated.
 * Shells, discs and bodies without a tail fin are taken as they are.
 *
 * @param share - Standard length as a share of total length, where the species' own is known, 0.5 to 1; else 0.80 to 0.85.
 * @throws InvalidInputError for a length that is not above zero and up to 1000 cm, another share, or an unknown measure.
 *
 * @example
 * ```ts
 * import { totalLength } from "vivary/species";
 *
 * totalLength(17, "SL").min; // => 20
 * ```
 */
export function totalLength(length: number, measure: LengthMeasure, share?: number): AdultLength["total"] {
  checkLength(length, "length");
  oneOf(measure, lengthMeasure, "measure");
  const { min, max } = sharesOf(share);
  if (measure === "SL") return { min: decimal(length / max), max: decimal(length / min) };
  return { min: length, max: isMeasuredWhole(measure) ? length : decimal(length / min) };
}

/** Whether a measure is of the whole animal, so that nothing has to be added for a tail fin. */
export const isMeasuredWhole = (measure: LengthMeasure | undefined): boolean =>
  measure !== undefined && measure !== "SL" && measure !== "FL" && measure !== "unstated";

/** The least and the greatest share of standard length in total length. */
function sharesOf(share: number | undefined): AdultLength["total"] {
  if (share === undefined) return standardShare;
  const { min, max } = plausibleShare;
  if (finite(share, "share") < min || share > max)
    throw refusal("share", `a share from ${min} to ${max}`, share, "range");
  return { min: share, max: share };
}

/** As long as an animal of a plan may be, cm. */
const longest = 1000;

function checkLength(length: number, subject: string): void {
  if (positive(length, subject) > longest) throw refusal(subject, `at most ${longest} cm`, length, "range");
}

/**
 * Standard length in cm that belongs to a total length in cm: the span of shares.
 *
 * @param share - Standard length as a share of total length, where the species' own is known, 0.5 to 1; else 0.80 to 0.85.
 * @throws InvalidInputError for a length that is not above zero and up to 1000 cm, or another share.
 */
export function standardLength(total: number, share?: number): AdultLength["total"] {
  checkLength(total, "total length");
  const { min, max } = sharesOf(share);
  return { min: total * min, max: total * max };
}

/**
 * The lengths stated for a sex or for both; all of them where none is.
 *
 * @throws InvalidInputError if there are none at all, or for an unknown sex.
 */
export function lengthsOfSex(lengths: readonly AdultLength[], sex: Sex | undefined): readonly AdultLength[] {
  if (sex === undefined) return preferred(lengths, () => true);
  oneOf(sex, sexes, "sex");
  return preferred(lengths, (length) => !length.sex || length.sex === sex);
}

/**
 * The lengths with the meaning wanted; all of them where none has it.
 *
 * @throws InvalidInputError if there are none at all, or for an unknown meaning.
 */
export function lengthsMeant(lengths: readonly AdultLength[], as: AdultLength["as"]): readonly AdultLength[] {
  oneOf(as, lengthMeaning, "as");
  return preferred(lengths, (length) => length.as === as);
}

function preferred(lengths: readonly AdultLength[], wanted: (length: AdultLength) => boolean) {
  if (listOf(lengths, "size.adultLength").length === 0)
    throw refusal("size.adultLength", "at least one length", lengths, "range");
  const found = lengths.filter(wanted);
  return found.length > 0 ? found : lengths;
}
