import { fieldOf } from "../reading/fields";
import { nearest } from "../reading/spelling";
import type { Check } from "./check";
import { familiesOf } from "./families-are-known";

export const lawsNameAnimals: Check = {
  name: "A name in a law is spelt as records spell it",
  async find({ root, records, files }) {
    const families = (await familiesOf(root)).map(([family]) => family);
    const own = records.flatMap(({ record: { taxonomy } }) => [taxonomy.name, ...(taxonomy.synonyms ?? [])]);
    const known = new Set([...families, ...own, ...own.map((name) => name.split(" ")[0] ?? name)]);
    return files.legal.flatMap(({ path: file, json }) =>
      listed(fieldOf(json, "listings")).flatMap((listing, index) =>
        listed(fieldOf(listing, "taxa")).flatMap((taxon, place) => {
          if (typeof taxon !== "string" || known.has(taxon)) return [];
          const meant = nearest(taxon, known, slips(taxon));
          if (meant === undefined) return [];
          return [
            {
              file,
              at: ["listings", index, "taxa", place],
              found: `${taxon}, which no record is called`,
              expected: "a scientific name, a genus or a family",
              guess: ` Did you mean ${meant}?`,
              mend: "Correct it; if the law spells it so, add it to taxonomy.synonyms, or a family to data/families.csv.",
            },
          ];
        }),
      ),
    );
  },
};

/** How many letters may be wrong before it is another animal: short names of genera differ by one. */
function slips(taxon: string): number {
  if (taxon.includes(" ")) return 2;
  return taxon.length < 8 ? 0 : 1;
}

const listed = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
