import { allFiles } from "../reading/collection";
import { mended } from "../reading/mended";
import type { Check, Slip } from "./check";
import { textsIn } from "./nothing-is-left-to-fill-in";

/** What is wrong with the letters of a text. */
type Fault = Pick<Slip, "found" | "expected" | "mend">;

export const lettersAreWhole: Check = {
  name: "Text is typed as others would seek it",
  find: (collection) =>
    allFiles(collection).flatMap(({ path, json }) =>
      textsIn(json).flatMap(({ at, text }) =>
        [torn, spaced, hard, misread, lost, coded]
          .map((faultIn) => faultIn(text))
          .filter((fault) => fault !== undefined)
          .map((fault): Slip => ({ file: path, at, ...fault })),
      ),
    ),
};

/** A letter and its accent as two characters. */
function torn(text: string): Fault | undefined {
  const expected = text.normalize("NFC");
  if (text === expected) return undefined;
  return { found: "a letter and its accent as two characters", expected, mend: "Type the letter anew." };
}

function spaced(text: string): Fault | undefined {
  if (text === tidy(text)) return undefined;
  return {
    found: `spaces too many in ${JSON.stringify(beginning(text))}`,
    expected: "one between words, and none at the ends",
    mend: "Take them out.",
  };
}

/** A space that looks like any other and is none. */
function hard(text: string): Fault | undefined {
  if (!/[^\S ]/u.test(tidy(text))) return undefined;
  return {
    found: `a space that does not break, in ${JSON.stringify(beginning(text))}`,
    expected: "an ordinary space",
    mend: "Type the space anew.",
  };
}

function misread(text: string): Fault | undefined {
  const expected = mended(text);
  if (text === expected) return undefined;
  return {
    found: `letters that were misread on the way, ${beginning(text)}`,
    expected,
    mend: "Type the letters anew.",
  };
}

function lost(text: string): Fault | undefined {
  if (!text.includes("\ufffd")) return undefined;
  return {
    found: `a letter that was lost on the way, ${beginning(text)}`,
    expected: "the letter",
    mend: "Type it anew.",
  };
}

/** A letter as web pages write it, such as &uuml; or &#252;. */
function coded(text: string): Fault | undefined {
  const entity = /&(?:#\d+|#x[\da-f]+|[a-z]+\d*);/i.exec(text);
  if (!entity) return undefined;
  return {
    found: `a letter as web pages write it, ${entity[0]}`,
    expected: "the letter",
    mend: "Type the letter itself.",
  };
}

const tidy = (text: string): string => text.trim().replace(/\s{2,}/g, " ");

const beginning = (text: string): string => text.slice(0, 40);
