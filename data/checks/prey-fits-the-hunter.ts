import { type AdultLength, type SpeciesProfile, statementsOf } from "vivary/species";
import { convert, type Unit } from "vivary/units";
import type { Check } from "./check";

/** A fish eater whose greatest prey is stated shorter than this share of itself is told with a note why. */
const strangelySmall = 0.15;

export const preyFitsTheHunter: Check = {
  name: "A fish eater that takes only very small fish, or longer ones than itself, says why",
  find: ({ records }) =>
    records.flatMap(({ path, record, profile }) => {
      const longest = longestUsual(profile);
      return statementsOf(record, "predation.eats").flatMap(
        ({ by, value, unit = "cm", note, setAside }, index) => {
          if (setAside || note || value === undefined || value === "none" || value.prey !== "fish") return [];
          if (value.greatest === undefined) return [];
          const greatest = convert(value.greatest, unit as Unit, "cm");
          if (longest === undefined) return [];
          const small = greatest < strangelySmall * longest;
          if (!small && greatest <= longest) return [];
          return [
            {
              file: path,
              at: ["predation", "eats", index],
              found: `fish of up to ${greatest} cm by ${by}, for an animal of usually ${longest.toFixed(1)} cm`,
              expected: `${small ? `at least ${strangelySmall} of` : "at most"} its length, or a note`,
              mend: `Correct the length, or add a note of one sentence: ${small ? "why it takes no larger fish" : "how it eats what is longer than itself"}.`,
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
