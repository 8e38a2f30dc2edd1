import { fieldOf } from "../fields";
import { nearest } from "../spelling";
import type { Check } from "./check";

export const lawsNameAnimals: Check = {
  name: "A name in a law is spelt as records spell it",
  find({ records, files }) {
    const known = new Set(
      records.flatMap(({ record: { taxonomy } }) => {
        const names = [taxonomy.name, ...(taxonomy.synonyms ?? [])];
        return [...names, ...names.map((name) => name.split(" ")[0] ?? name), taxonomy.family];
      }),
    );
    return files.legal.flatMap(({ path: file, json }) =>
      listed(fieldOf(json, "listings")).flatMap((listing, index) =>
        listed(fieldOf(listing, "taxa")).flatMap((taxon, place) => {
          if (typeof taxon !== "string" || known.has(taxon)) return [];
          const meant = nearest(taxon, known, taxon.includes(" ") ? 2 : 1);
          if (meant === undefined) return [];
          return [
            {
              file,
              at: ["listings", index, "taxa", place],
              found: `${taxon}, which no record is called`,
              expected: "a scientific name, a genus or a family",
              guess: ` Did you mean ${meant}?`,
              mend: `Correct it; if the law spells it so, add it to taxonomy.synonyms of ${meant}.`,
            },
          ];
        }),
      ),
    );
  },
};

const listed = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
