import { allFiles } from "../reading/collection";
import type { Check } from "./check";
import { textsIn } from "./nothing-is-left-to-fill-in";

export const lettersAreWhole: Check = {
  name: "Text is typed as others would seek it",
  find: (collection) =>
    allFiles(collection).flatMap(({ path, json }) =>
      textsIn(json).flatMap(({ at, text }) => {
        const [place, tidy] = [{ file: path, at }, text.trim().replace(/\s{2,}/g, " ")];
        const torn = {
          ...place,
          found: "a letter and its accent as two characters",
          expected: text.normalize("NFC"),
          mend: "Type the letter anew.",
        };
        const spaced = {
          ...place,
          found: `spaces too many in ${JSON.stringify(text.slice(0, 40))}`,
          expected: "one between words, and none at the ends",
          mend: "Take them out.",
        };
        return [...(text === text.normalize("NFC") ? [] : [torn]), ...(text === tidy ? [] : [spaced])];
      }),
    ),
};
