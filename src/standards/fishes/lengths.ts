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
}

/**
 * The lengths of a fish. At present: as planned, else what adults of its sex usually reach, and for young anything up
 * to that. Adult: from the usual to the greatest, since no text says which it means; at least the planned one.
 */
export function lengthsOf({ sex, young, stated, adult }: Sized): Lengths {
  const known = adult && lengthsOfSex(adult, sex);
  const usual = known && lengthsMeant(known, "usual");
  const least = young ? 0 : undefined;
  return {
    ...(stated !== undefined && presentLengths({ min: stated, max: stated })),
    ...(stated === undefined &&
      usual && {
        "present total length": spanOf(
          usual.map(({ total }) => total),
          least,
        ),
        "present standard length": spanOf(usual.map(standardOf), least),
      }),
    ...(known && usual && { "adult total length": adultLength(usual, known, stated) }),
  };
}

function presentLengths(total: Range): Lengths {
  const standard = { min: standardLength(total.min).min, max: standardLength(total.max).max };
  return { "present total length": total, "present standard length": standard };
}

function adultLength(usual: readonly AdultLength[], known: readonly AdultLength[], stated = 0): Range {
  const { min } = spanOf(usual.map(({ total }) => total));
  const { max } = spanOf(known.map(({ total }) => total));
  return { min: Math.max(min, stated), max: Math.max(max, stated) };
}

/** Without the tail fin; the disc of a ray has none. */
function standardOf({ length, measure, total }: AdultLength): Range {
  if (measure === "SL" || measure === "disc") return { min: length, max: length };
  return { min: standardLength(total.min).min, max: standardLength(total.max).max };
}

function spanOf(spans: readonly Range[], least?: number): Range {
  const ends = spans.flatMap(({ min, max }) => [min, max].map((end) => positive(end, "size.adultLength")));
  return { min: least ?? Math.min(...ends), max: Math.max(...ends) };
}
