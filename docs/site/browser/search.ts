// The search of every page. Without JavaScript it is not there, and the list of species is.
import { type SearchNames, type Suggestion, suggestSpecies } from "vivary/search";

/** The longest that anybody types. */
const longest = 200;

/** So many are shown. */
const most = 10;

/** Puts the search where the page has room for it. */
export function searchIn(languages: readonly SearchNames[]): void {
  const place = document.querySelector<HTMLElement>(".search");
  if (!place) return;
  const { species = "", label = "", found = "", more = "", none = "" } = place.dataset;
  const listAt = new URL(species, location.href).href;
  const input = Object.assign(document.createElement("input"), {
    type: "search",
    id: "search",
    maxLength: longest,
    autocomplete: "off",
    spellcheck: false,
  });
  const caption = Object.assign(document.createElement("label"), { htmlFor: input.id, textContent: label });
  const status = Object.assign(document.createElement("p"), { role: "status" });
  const list = document.createElement("ul");
  const form = document.createElement("form");
  form.role = "search";
  form.append(caption, input, status, list);
  place.replaceChildren(form);

  const saidOf = (count: number) => {
    if (input.value.trim() === "") return "";
    if (count === 0) return none;
    return count > most ? more : `${found} ${count}`;
  };
  const show = () => {
    const suggestions = suggestSpecies(input.value, { languages, most: most + 1 });
    list.replaceChildren(...suggestions.slice(0, most).map((one) => itemOf(one, listAt)));
    status.textContent = saidOf(suggestions.length);
  };
  input.addEventListener("input", show);
  input.addEventListener("search", show);
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    list.querySelector("a")?.click();
  });
  show();
}

/** A link to a page that stands beside the list of species. */
function itemOf({ id, form, name, matched }: Suggestion, list: string): HTMLLIElement {
  const item = document.createElement("li");
  const link = document.createElement("a");
  link.href = new URL(form === undefined ? `${id}.html` : `${id}/${form}.html`, list).href;
  link.textContent = name;
  if (matched.text !== name) {
    const also = document.createElement("span");
    also.textContent = ` (${matched.text})`;
    link.append(also);
  }
  item.append(link);
  return item;
}
