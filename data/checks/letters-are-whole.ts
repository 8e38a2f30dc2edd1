import { allFiles } from "../reading/collection";
import { mended } from "../reading/mended";
import type { Check } from "./check";
import { textsIn } from "./nothing-is-left-to-fill-in";

/** How a letter is written on web pages, such as &uuml; or &#252;. */
const entity = /&(?:#\d+|#x[\da-f]+|[a-z]+\d*);/i;

/** A space that looks like any other and is none. */
const otherSpace = /[^\S ]/u;

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
        const hard = {
          ...place,
          found: `a space that does not break, in ${JSON.stringify(text.slice(0, 40))}`,
          expected: "an ordinary space",
          mend: "Type the space anew.",
        };
        const misread = {
          ...place,
          found: `letters that were misread on the way, ${text.slice(0, 40)}`,
          expected: mended(text),
          mend: "Type the letters anew.",
        };
        const lost = {
          ...place,
          found: `a letter that was lost on the way, ${text.slice(0, 40)}`,
          expected: "the letter",
          mend: "Type it anew.",
        };
        const coded = {
          ...place,
          found: `a letter as web pages write it, ${entity.exec(text)?.[0]}`,
          expected: "the letter",
          mend: "Type the letter itself.",
        };
        return [
          ...(text === text.normalize("NFC") ? [] : [torn]),
          ...(text === tidy ? [] : [spaced]),
          ...(otherSpace.test(tidy) ? [hard] : []),
          ...(text === mended(text) ? [] : [misread]),
          ...(text.includes("\ufffd") ? [lost] : []),
          ...(entity.test(text) ? [coded] : []),
        ];
      }),
    ),
};
