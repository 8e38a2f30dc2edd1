import { languages } from "../modules/search-names";
import { fieldOf, fieldsOf } from "../reading/fields";
import { nearest } from "../reading/spelling";
import type { Check } from "./check";

/** A misspelt language would be one of its own, with a public module. */
export const languagesAreKnown: Check = {
  name: "Names are in a language that others have names in",
  find: ({ files }) =>
    files.species.flatMap(({ path: file, json }) =>
      holders(json).flatMap(({ at, names }) =>
        fieldsOf(names)
          .filter(([language]) => !Object.hasOwn(languages, language))
          .map(([language]) => {
            const meant = meantBy(language);
            return {
              file,
              at: [...at, language],
              found: `names in the language ${language}`,
              expected: `one of ${Object.keys(languages).join(", ")}`,
              guess: meant === undefined ? "" : ` Did you mean ${meant}?`,
              mend: "Correct it; a language in which no species has a name yet joins the list in data/modules/search-names.ts.",
            };
          }),
      ),
    ),
};

/** The species and its forms, each with its names. */
const holders = (json: unknown) => [
  { at: ["names"], names: fieldOf(json, "names") },
  ...fieldsOf(fieldOf(json, "forms")).map(([id, form]) => ({
    at: ["forms", id, "names"],
    names: fieldOf(form, "names"),
  })),
];

/** The language that another word for it means, with or without a region, or a slip of one letter. */
function meantBy(tag: string): string | undefined {
  const [word = ""] = tag.toLowerCase().split("-");
  const isMeant = ([language, others]: readonly [string, readonly string[]]) =>
    language === word || others.includes(word);
  return Object.entries(languages).find(isMeant)?.[0] ?? nearest(word, Object.keys(languages), 1);
}
