import { type Suggestion, suggestSpecies } from "vivary/search";
import type { Language } from "../texts/languages";
import type { Texts } from "../texts/texts";
import { type Child, element } from "./element";

/** The most that can be typed, as `suggestSpecies` takes it. */
const longest = 200;

/**
 * A field that finds species while somebody types: a combobox with a list, by the pattern of the ARIA Authoring Practices.
 * The focus stays in the field; arrows choose, Enter adds, Escape closes.
 *
 * @param add - Adds the species that was chosen.
 * @param say - Tells how many there are to those who do not see the list.
 */
export function speciesBox(
  { texts, searched }: Language,
  add: (suggestion: Suggestion) => void,
  say: (text: string) => void,
): HTMLElement {
  let found: readonly Suggestion[] = [];
  let active = 0;

  const list = element("ul", {
    id: "species-list",
    role: "listbox",
    "aria-label": texts.search.list,
    hidden: true,
  });
  const input = element("input", {
    id: "species",
    type: "text",
    role: "combobox",
    autocomplete: "off",
    autocapitalize: "none",
    spellcheck: "false",
    maxlength: String(longest),
    "aria-autocomplete": "list",
    "aria-controls": "species-list",
    "aria-expanded": "false",
    "aria-describedby": "species-hint",
  });

  const show = () => {
    list.replaceChildren(...found.map((suggestion, index) => option(suggestion, index)));
    list.hidden = found.length === 0;
    input.setAttribute("aria-expanded", String(found.length > 0));
    if (found.length > 0) input.setAttribute("aria-activedescendant", `species-${active}`);
    else input.removeAttribute("aria-activedescendant");
    list.children[active]?.scrollIntoView({ block: "nearest" });
  };
  const option = (suggestion: Suggestion, index: number) => {
    const made = element(
      "li",
      { id: `species-${index}`, role: "option", "aria-selected": String(index === active) },
      ...saidOf(suggestion, texts),
    );
    made.addEventListener("mousedown", (event) => {
      event.preventDefault();
      choose(index);
    });
    return made;
  };
  const close = () => {
    found = [];
    show();
  };
  const clear = () => {
    input.value = "";
  };
  const choose = (index: number) => {
    const suggestion = found[index];
    if (!suggestion) return;
    clear();
    close();
    add(suggestion);
  };
  const move = (steps: number) => {
    active = (active + steps + found.length) % found.length;
    show();
  };
  const search = () => {
    found = suggestSpecies(input.value, { languages: searched });
    active = 0;
    show();
    if (input.value.trim() !== "") say(texts.search.found(found.length));
  };

  const keys: Readonly<Record<string, () => void>> = {
    ArrowDown: () => (found.length > 0 ? move(1) : search()),
    ArrowUp: () => found.length > 0 && move(-1),
    Enter: () => choose(active),
    Escape: () => (found.length > 0 ? close() : clear()),
  };
  input.addEventListener("input", search);
  input.addEventListener("blur", close);
  input.addEventListener("keydown", (event) => {
    const act = event.isComposing ? undefined : keys[event.key];
    if (!act) return;
    event.preventDefault();
    act();
  });

  return element(
    "div",
    { class: "field search" },
    element("label", { for: "species" }, texts.search.label),
    input,
    element("p", { class: "hint", id: "species-hint" }, texts.search.hint),
    list,
  );
}

/** A suggestion in words: its name, its scientific name, and the name that fits what was typed if that is another. */
function saidOf({ id, name, matched: { text, as } }: Suggestion, { search }: Texts): readonly Child[] {
  const scientific = id.charAt(0).toUpperCase() + id.slice(1).replaceAll("-", " ");
  const isNew = ![name, scientific].includes(text);
  return [
    element("span", {}, name),
    name !== scientific && element("i", { class: "other", lang: "la" }, ` ${scientific}`),
    isNew && element("span", { class: "other" }, ` (${search.as[as]}: ${text})`),
  ];
}
