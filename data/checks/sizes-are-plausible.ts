import { applyForm, type SpeciesProfile, statementsOf } from "vivary/species";
import type { Collection } from "../reading/collection";
import type { Check, Slip } from "./check";

/** A slip from millimetres to centimetres is one of ten. */
const slip = 8;

export const sizesArePlausible: Check = {
  name: "A length fits its family and its tank",
  find({ records }) {
    const lengths = records.map(({ path, profile }) => ({
      path,
      family: profile.taxonomy.family,
      longest: longestOf(profile),
      tank: profile.space?.baseLength?.value[0]?.least,
    }));
    const known = lengths.filter(({ longest }) => Number.isFinite(longest));
    const ofSpecies = known.flatMap(({ path, family, longest, tank }) => {
      const relatives = known.filter((other) => other.family === family && other.path !== path);
      const usual = geometricMean(relatives.map((other) => other.longest));
      const far = relatives.length > 1 && (longest > slip * usual || longest * slip < usual);
      const outgrown = tank !== undefined && tank < longest;
      const strange = {
        file: path,
        at: ["size", "adultLength"],
        found: `a longest length of ${longest} cm`,
        expected: `within ${slip} times that of other ${family}, about ${usual.toFixed(1)} cm`,
        mend: "Look for millimetres or inches taken for centimetres; state the unit of the source.",
      };
      const cramped = {
        file: path,
        at: ["space", "baseLength"],
        found: `a tank of ${tank} cm for an animal of up to ${longest} cm`,
        expected: "a tank longer than the animal",
        mend: "Correct space.baseLength or the length.",
      };
      return [...(far ? [strange] : []), ...(outgrown ? [cramped] : [])];
    });
    return [...ofSpecies, ...records.flatMap(formsAmiss)];
  },
};

/** Forms so many times as long as their species that a unit must have been taken for another. */
function formsAmiss({ path, record, profile }: Collection["records"][number]): readonly Slip[] {
  const usual = longestOf(profile);
  return Object.entries(record.forms ?? {})
    .filter(([, form]) => statementsOf(form, "size.adultLength").length > 0)
    .map(([id]) => ({ id, longest: longestOf(applyForm(profile, id)) }))
    .filter(({ longest }) => longest > slip * usual || longest * slip < usual)
    .map(({ id, longest }) => ({
      file: path,
      at: ["forms", id, "size", "adultLength"],
      found: `a longest length of ${longest} cm, of a species of ${usual} cm`,
      expected: `within ${slip} times that of the species`,
      mend: "Look for millimetres or inches taken for centimetres; state the unit of the source.",
    }));
}

const longestOf = ({ size }: SpeciesProfile) =>
  Math.max(...(size?.adultLength?.value ?? []).map(({ length }) => length));

const geometricMean = (numbers: readonly number[]) =>
  Math.exp(numbers.reduce((sum, number) => sum + Math.log(number), 0) / numbers.length);
