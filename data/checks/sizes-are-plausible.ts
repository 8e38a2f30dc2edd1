import type { Check } from "./check";

/** A slip from millimetres to centimetres is one of ten. */
const slip = 8;

export const sizesArePlausible: Check = {
  name: "A length fits its family and its tank",
  find({ records }) {
    const lengths = records.map(({ path, profile }) => ({
      path,
      family: profile.taxonomy.family,
      longest: Math.max(...(profile.size?.adultLength?.value ?? []).map(({ length }) => length)),
      tank: profile.space?.baseLength?.value[0]?.least,
    }));
    const known = lengths.filter(({ longest }) => Number.isFinite(longest));
    return known.flatMap(({ path, family, longest, tank }) => {
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
  },
};

const geometricMean = (numbers: readonly number[]) =>
  Math.exp(numbers.reduce((sum, number) => sum + Math.log(number), 0) / numbers.length);
