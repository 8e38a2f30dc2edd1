import { allFiles } from "../collection";
import type { Check } from "./check";
import { textsIn } from "./nothing-is-left-to-fill-in";

export const lettersAreWhole: Check = {
  name: "An accent is one character with its letter, so that names are found",
  find: (collection) =>
    allFiles(collection).flatMap(({ path, json }) =>
      textsIn(json)
        .filter(({ text }) => text !== text.normalize("NFC"))
        .map(({ at, text }) => ({
          file: path,
          at,
          found: "a letter and its accent as two characters",
          expected: text.normalize("NFC"),
          mend: "Type the letter anew.",
        })),
    ),
};
