import { allFiles } from "../reading/collection";
import { fieldsOf } from "../reading/fields";
import type { Check } from "./check";

/** How a question begins that a new file asks. */
export const question = "To fill in:";

/** What writers leave for themselves. */
const reminder = /\b(TODO|TBD|FIXME|XXX)\b|\?\?/;

export const nothingIsLeftToFillIn: Check = {
  name: "Nothing is left to fill in",
  find: (collection) =>
    allFiles(collection).flatMap(({ path, json }) =>
      textsIn(json)
        .filter(({ text }) => text.toLowerCase().startsWith(question.toLowerCase()) || reminder.test(text))
        .map(({ at, text }) => ({
          file: path,
          at,
          found: reminder.test(text)
            ? `a reminder to oneself, ${text.slice(0, 40)}`
            : "a question of the new file",
          expected: "the answer, with the question gone",
          mend: "Answer it; where nobody knows, take the whole line out.",
        })),
    ),
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
