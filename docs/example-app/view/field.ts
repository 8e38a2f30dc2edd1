import { type Draft, type Path, valueAt, withValue } from "../plan/draft";
import { type Field, type FieldSet, isShape, reshaped, type WordList } from "../plan/fields";
import { limitsAt } from "../plan/limits";
import { type Quantity, type Scale, shownUnit, toShown } from "../plan/quantities";
import type { Language } from "../texts/languages";
import { figure } from "../texts/numbers";
import { choice } from "./choice";
import { element } from "./element";
import { labelled } from "./labelled";
import { numberInput } from "./number-input";
import type { Change, Shown } from "./shown";

/** The id of the field at a path. */
export const fieldId = (path: Path): string => path.join("-");

/** A field with its label, and room for a note on it. */
export function fieldView({ asks, label, path }: Field, shown: Shown, change: Change): HTMLElement {
  const { texts, messages } = shown.language;
  if ("words" in asks) return labelled(wordChoice(path, asks.words, shown, change), texts.labels[label]);
  const scale = scaleOf(asks.number, path, shown);
  const unit = shownUnit(scale);
  const input = numberInput(fieldId(path), path, scale, shown, change);
  return labelled(input, texts.labels[label], unit && messages.units[unit], limitsText(path, scale, shown));
}

/**
 * Fields that answer one question together.
 *
 * @param also - The path that the question is asked under besides those of its fields.
 */
export function fieldSetView(
  { legend, fields }: FieldSet,
  also: Path,
  shown: Shown,
  change: Change,
): HTMLElement {
  const answers = [also, ...fields.map(({ path }) => path)].map(fieldId).join(" ");
  return element(
    "fieldset",
    {},
    element("legend", {}, shown.language.texts.labels[legend]),
    element("div", { class: "fields" }, ...fields.map((field) => fieldView(field, shown, change))),
    element("p", { class: "note", "data-answers": answers }),
  );
}

/** What a number may be, in the reader's language and units. */
function limitsText(path: Path, scale: Scale, { language: { messages, texts } }: Shown): string {
  const { least, most, above, whole } = limitsAt(path);
  const inCm = { ...scale, held: "cm" } as const;
  const [from, to] = [least, most].map((end) => figure(toShown(end, inCm), messages.language));
  const unit = shownUnit(scale);
  const end = unit ? `${to}\u00a0${messages.units[unit]}` : to;
  return texts.limits(`${from}`, `${end}`, above ? "above" : whole ? "whole" : "from");
}

/** The scale of a number; lengths of the tank are in the plan's unit. */
const scaleOf = (quantity: Quantity, [part]: Path, { units, draft }: Shown): Scale => ({
  quantity,
  system: units,
  held: (part === "tank" ? draft.tank.unit : undefined) ?? "cm",
});

/** The lists of which one word is always chosen. */
const needed: ReadonlySet<WordList> = new Set<WordList>(["shape", "food", "zone"]);

function wordChoice(path: Path, list: WordList, shown: Shown, change: Change): HTMLSelectElement {
  const words = Object.entries(wordsOf(list, shown));
  const value = String(valueAt(shown.draft, path) ?? "");
  const unsaid = needed.has(list) ? undefined : shown.language.texts.notSaid;
  return choice({ id: fieldId(path), value, words, unsaid }, (word) =>
    list === "shape" && isShape(word)
      ? change((draft) => withValue(draft, ["tank", "base"], reshaped(draft.tank.base, word)), "done")
      : change((draft) => withValue(draft, path, held(list, word)), "typed"),
  );
}

/** A word that was chosen as the plan holds it. */
function held(list: WordList, word: string): string | boolean | readonly string[] | undefined {
  if (word === "") return undefined;
  if (list === "lawgiver") return word.split(",");
  return list === "yesOrNo" ? word === "true" : word;
}

/** The words of a list: those of the library, where it has them. */
function wordsOf(list: WordList, { language, draft }: Shown): Readonly<Record<string, string>> {
  const { texts, messages, lawgivers } = language;
  switch (list) {
    case "shape":
      return shapesFor(draft, texts.shapes);
    case "lawgiver":
      return placesFor(draft, lawgivers);
    case "yesOrNo":
      return { true: texts.yes, false: texts.no };
    default:
      return messages.words[list];
  }
}

/** The shapes that can be chosen; nobody draws corners here, but a plan may come with them. */
function shapesFor({ tank }: Draft, { polygon, ...others }: Readonly<Record<string, string>>) {
  return tank.base.shape === "polygon" && polygon !== undefined ? { ...others, polygon } : others;
}

/** The places that can be chosen; nobody chooses several here, but a plan may come with them. */
function placesFor({ jurisdiction = [] }: Draft, places: Language["lawgivers"]) {
  if (jurisdiction.length < 2) return places;
  return { ...places, [String(jurisdiction)]: jurisdiction.map((place) => places[place]).join(", ") };
}
