import { germanPages } from "vivary/report/de";
import type { SpeciesRecord } from "vivary/species";
import type { Check, Slip } from "./check";
import { statementsEverywhere } from "./statements-everywhere";

/** Words by which a region is told to be English still. */
export const englishInRegions =
  /\b(?:and|basins?|central|coast|drainages?|from|islands?|lakes?|lower|northern|of|rivers?|southern|the|to|upper|western)\b/i;

/** Reports and pages speak German too: what a record alone can tell them, it tells in German. */
export const germanIsWhole: Check = {
  name: "What is told of a species in German is German",
  find({ records }) {
    const english = new Set(records.flatMap(({ record }) => record.names.en ?? []));
    return records.flatMap(({ path: file, record }) =>
      [...namesAmiss(record, english), ...rehomingAmiss(record), ...regionsAmiss(record)].map((slip) => ({
        file,
        ...slip,
      })),
    );
  },
};

type Found = Omit<Slip, "file">;

/** German names in small letters, and English ones among them. */
function namesAmiss({ names, forms = {} }: SpeciesRecord, english: ReadonlySet<string>): readonly Found[] {
  const holders = [
    { names, above: ["names"] },
    ...Object.entries(forms).map(([id, form]) => ({ names: form.names, above: ["forms", id, "names"] })),
  ];
  return holders.flatMap((holder) =>
    (holder.names.de ?? []).flatMap((name, index) => {
      const place = { at: [...holder.above, "de", index], found: `the German name ${name}` };
      if (!/^\p{Lu}/u.test(name))
        return [{ ...place, expected: "a capital, as of all nouns", mend: "Write it as German does." }];
      if (!english.has(name) || !/[a-z]/.test(name)) return [];
      return [
        {
          ...place,
          expected: "another one than the English name",
          mend: "Where German has none, leave it out: the scientific name is shown.",
        },
      ];
    }),
  );
}

const rehomingAmiss = (record: SpeciesRecord): readonly Found[] =>
  statementsEverywhere(record, "care.rehoming").flatMap(({ at, statement: { value } }) =>
    value === undefined || value.de !== undefined
      ? []
      : [
          {
            at,
            found: "care.rehoming in English alone",
            expected: "the same sentence in German, as de",
            mend: "Add it; who writes no German asks for it in the pull request.",
          },
        ],
  );

const regionsAmiss = (record: SpeciesRecord): readonly Found[] =>
  statementsEverywhere(record, "origin.regions").flatMap(({ at, statement: { value } }) =>
    value === undefined || !englishInRegions.test(germanPages.page.region(value))
      ? []
      : [
          {
            at,
            found: `the region ${value}, of which German has no word`,
            expected: "a line of it in src/report/messages/german-regions.ts",
            mend: "Add the line there, or call the region as another record does; who writes no German asks for it in the pull request.",
          },
        ],
  );
