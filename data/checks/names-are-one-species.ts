import type { SpeciesRecord } from "vivary/species";
import type { Check } from "./check";

/** Accepted names, synonyms, English names and identifiers that two records share. */
export const namesAreOneSpecies: Check = {
  name: "A name means one species",
  find: ({ records }) =>
    Object.entries(kinds).flatMap(([kind, namesOf]) => {
      const bearers = new Map<string, readonly string[]>();
      for (const { path, record } of records) {
        for (const name of new Set(namesOf(record).map((name) => name.toLowerCase())))
          bearers.set(name, [...(bearers.get(name) ?? []), path]);
      }
      return [...bearers].flatMap(([name, [first = "", ...others]]) =>
        others.length === 0
          ? []
          : [
              {
                where: first,
                found: `${kind} "${name}" stands in ${others.join(", ")} too`,
                expected: "each to mean one species",
                mend: "Keep it where it belongs; a trade name of several is told apart by a further word.",
              },
            ],
      );
    }),
};

const kinds: Readonly<Record<string, (record: SpeciesRecord) => readonly string[]>> = {
  "the scientific name": ({ taxonomy }) => [taxonomy.name, ...(taxonomy.synonyms ?? [])],
  "the English name": ({ names, forms = {} }) => [
    ...(names.en ?? []),
    ...Object.values(forms).flatMap((form) => form.names.en ?? []),
  ],
  "the identifier": ({ identifiers = {} }) =>
    Object.entries(identifiers).map(([register, id]) => `${register} ${id}`),
};
