import type { Check } from "./check";
import { question, textsIn } from "./nothing-is-left-to-fill-in";

/** The fields whose sentences pages print one after another. */
const fields: readonly unknown[] = ["note", "adopt", "setAside"];

export const notesAreSentences: Check = {
  name: "A note, and the reason of a choice, is a sentence for readers",
  find: ({ files }) =>
    files.species.flatMap(({ path: file, json }) =>
      textsIn(json)
        .filter(({ at, text }) => fields.includes(at.at(-1)) && text !== "" && !text.startsWith(question))
        .filter(({ text }) => !isSentence(text))
        .map(({ at, text }) => ({
          file,
          at,
          found: `no sentence, ${JSON.stringify(text.slice(0, 40))}`,
          expected: "a capital or a figure first, and a full stop last",
          mend: "Write it for readers: pages print it beside others.",
        })),
    ),
};

const isSentence = (text: string) => /^["'(„<>±]*[\p{Lu}\d].*[.!?][")“]?$/su.test(text);
