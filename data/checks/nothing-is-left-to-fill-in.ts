import { allFiles } from "../reading/collection";
import { fieldsOf } from "../reading/fields";
import type { Check } from "./check";

/** How a question begins that a new file asks. */
export const question = "To fill in:";

/** What writers leave for themselves. */
const reminder = /\b(TODO|TBD|FIXME|XXX)\b|\?\?/;

/** What is written for an answer that is missing. */
const placeholder =
  /^(?:tb[acd]|todo|fixme|n\/a|n\. ?a\.|not known|not available|unknown|see (?:above|below))\.?$/i;

export const nothingIsLeftToFillIn: Check = {
  name: "Nothing is left to fill in",
  find: (collection) =>
    allFiles(collection).flatMap(({ path, json }) =>
      textsIn(json).flatMap(({ at, text }) => {
        const found = leftOpen(text);
        return found === undefined ? [] : [{ file: path, at, found, ...answerAt(at) }];
      }),
    ),
};

/** What a text leaves open, if it does. */
function leftOpen(text: string): string | undefined {
  if (reminder.test(text)) return `a reminder to oneself, ${text.slice(0, 40)}`;
  if (text.toLowerCase().startsWith(question.toLowerCase())) return "a question of the new file";
  const saysNothing = text !== "" && !/[\p{L}\p{N}]/u.test(text);
  return saysNothing || placeholder.test(text) ? `nothing but ${JSON.stringify(text)}` : undefined;
}

/** What belongs there. */
const answerAt = (at: Text["at"]) =>
  at[0] === "sources" && at.at(-1) === "at"
    ? {
        expected: "the page, row or address where it stands",
        mend: "Say where you read it; if you recall it and did not read it, put memory: true in the place of at.",
      }
    : {
        expected: "the answer, with the question gone",
        mend: "Answer it; where nobody knows, take the whole line out.",
      };

interface Text {
  readonly at: readonly (string | number)[];
  readonly text: string;
}

/** Every text in a value. */
export function textsIn(value: unknown, at: Text["at"] = []): readonly Text[] {
  if (typeof value === "string") return [{ at, text: value }];
  const entries = Array.isArray(value) ? [...value.entries()] : fieldsOf(value);
  return entries.flatMap(([key, held]) => textsIn(held, [...at, key]));
}
