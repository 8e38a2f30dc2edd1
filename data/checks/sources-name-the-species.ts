import type { Check } from "./check";

export const sourcesNameTheSpecies: Check = {
  name: "A source knows the species by one of its names, or is of another one and says so",
  find: ({ records }) =>
    records.flatMap(({ path, record: { taxonomy, sources } }) => {
      const synonyms = taxonomy.synonyms ?? [];
      const own = [taxonomy.name, ...synonyms];
      return Object.entries(sources).flatMap(([key, { under, of }]) => [
        ...(under === undefined || synonyms.includes(under)
          ? []
          : [
              {
                file: path,
                at: ["sources", key, "under"],
                found: `the source ${key} records it under ${under}`,
                expected: "a name among taxonomy.synonyms",
                mend: "Add the synonym to taxonomy.synonyms, or say of where it is another species.",
              },
            ]),
        ...(of === undefined || !own.includes(of)
          ? []
          : [
              {
                file: path,
                at: ["sources", key, "of"],
                found: `the source ${key} is said to be of ${of}, which is a name of this species`,
                expected: "another species, a genus or a family",
                mend: "Say under for a synonym, and neither for the accepted name.",
              },
            ]),
      ]);
    }),
};
