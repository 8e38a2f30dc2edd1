import { type AdultLength, type SpeciesProfile, statementsOf } from "vivary/species";
import { convert, type Unit } from "vivary/units";
import type { Check } from "./check";

/** A fish eater whose greatest prey is stated shorter than this share of itself is told with a note why. */
const strangelySmall = 0.15;

/** What is no fish, and longer than this share of its hunter, is told with a note how it is eaten. */
const strangelyLong = 0.5;

export const preyFitsTheHunter: Check = {
  name: "Prey that is very short or very long beside its hunter is told with the reason",
  find: ({ records }) =>
    records.flatMap(({ path, record, profile }) => {
      const longest = longestUsual(profile);
      return statementsOf(record, "predation.eats").flatMap(
        ({ by, value, unit = "cm", note, setAside }, index) => {
          if (setAside || note || value === undefined || value === "none") return [];
          if (value.greatest === undefined) return [];
          const isFish = value.prey === "fish";
          const greatest = convert(value.greatest, unit as Unit, "cm");
          if (longest === undefined) return [];
          const small = isFish && greatest < strangelySmall * longest;
          if (!small && greatest <= (isFish ? 1 : strangelyLong) * longest) return [];
          return [
            {
              file: path,
              at: ["predation", "eats", index],
              found: `${value.prey} of up to ${greatest} cm by ${by}, for an animal of usually ${longest.toFixed(1)} cm`,
              expected: `${small ? `at least ${strangelySmall} of` : isFish ? "at most" : `at most ${strangelyLong} of`} its length, or a note`,
              mend: `Correct the length, or add a note of one sentence: ${small ? "why it takes no larger fish" : `how it eats what is ${isFish ? "longer than itself" : "so long"}`}.`,
            },
          ];
        },
      );
    }),
};

/** The greatest total length that grown animals usually reach, in cm; the greatest on record where none is usual. */
function longestUsual({ size }: SpeciesProfile): number | undefined {
  const lengths = size?.adultLength?.value ?? [];
  const usual = lengths.filter(({ as }) => as === "usual");
  const totals = (usual.length > 0 ? usual : lengths).map(({ total }: AdultLength) => total.max);
  return totals.length > 0 ? Math.max(...totals) : undefined;
}
