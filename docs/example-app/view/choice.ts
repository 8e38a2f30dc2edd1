import { element } from "./element";

/** What a choice is among. */
interface Choice {
  readonly id: string;
  /** The word that is chosen; empty where none is. */
  readonly value: string;
  readonly words: readonly (readonly [word: string, text: string])[];
  /** What it says where nothing is chosen; absent where something must be. */
  readonly unsaid?: string | undefined;
}

/** A choice among words; nothing chosen is an empty one. */
export function choice(
  { id, value, words, unsaid }: Choice,
  choose: (word: string) => void,
): HTMLSelectElement {
  const options = [...(unsaid === undefined ? [] : [["", unsaid] as const]), ...words].map(([word, text]) =>
    element("option", { value: word, selected: word === value }, text),
  );
  const select = element("select", { id }, ...options);
  select.addEventListener("change", () => choose(select.value));
  return select;
}
