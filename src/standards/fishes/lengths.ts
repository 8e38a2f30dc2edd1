import { positive } from "../../checks";
import type { Range } from "../../ranges";
import { type AdultLength, type Sex, standardLength } from "../../species";
import { lengthsMeant, lengthsOfSex } from "../../species/inner";

/** The lengths that texts speak of. */
export type LengthName = "present standard length" | "present total length" | "adult total length";

/** Lengths of one fish in cm, as spans; absent where unknown. */
export type Lengths = { readonly [Name in LengthName]?: Range };

/** What is known of a fish whose lengths are sought. */
interface Sized {
  readonly sex?: Sex;
  readonly young: boolean;
  /** Total length in cm, as planned. */
  readonly stated?: number | undefined;
  /** The adult lengths of its species. */
  readonly adult?: readonly AdultLength[] | undefined;
  /** Standard length as a share of total length, where the species' own is known. */
  readonly share?: number | undefined;
}

/**
 * The lengths of a fish. At present: as planned, else what adults of its sex usually reach, and for young anything up
 * to that. Adult: from the usual to the greatest, since no text says which it means; at least the planned one.
 */
export function lengthsOf({ sex, young, stated, adult, share }: Sized): Lengths {
  const known = adult && lengthsOfSex(adult, sex);
  const usual = known && lengthsMeant(known, "usual");
  const least = young ? 0 : undefined;
  return {
    ...(stated !== undefined && presentLengths({ min: stated, max: stated }, share)),
    ...(stated === undefined &&
      usual && {
        "present total length": spanOf(
          usual.map(({ total }) => total),
          least,
        ),
        "present standard length": spanOf(
          usual.map((length) => standardOf(length, share)),
          least,
        ),
      }),
    ...(known && usual && { "adult total length": adultLength(usual, known, stated) }),
  };
}

function presentLengths(total: Range, share: number | undefined): Lengths {
  return { "present total length": total, "present standard length": withoutTail(total, share) };
}

/**
 * By the species' own share where it is known; but never surely shorter than fishes with a tail fin of common size, since
 * that share is of few fish, and tails differ between the sexes.
 */
const withoutTail = ({ min, max }: Range, share: number | undefined): Range => ({
  min: standardLength(min, share).min,
  max: Math.max(standardLength(max, share).max, standardLength(max).max),
});

function adultLength(usual: readonly AdultLength[], known: readonly AdultLength[], stated = 0): Range {
  const { min } = spanOf(usual.map(({ total }) => total));
  const { max } = spanOf(known.map(({ total }) => total));
  return { min: Math.max(min, stated), max: Math.max(max, stated) };
}

/** Without the tail fin; the disc of a ray has none. */
function standardOf({ length, measure, total }: AdultLength, share: number | undefined): Range {
  if (measure === "SL" || measure === "disc") return { min: length, max: length };
  return withoutTail(total, share);
}

function spanOf(spans: readonly Range[], least?: number): Range {
  const ends = spans.flatMap(({ min, max }) => [min, max].map((end) => positive(end, "size.adultLength")));
  return { min: least ?? Math.min(...ends), max: Math.max(...ends) };
}
