import { type Draft, type Path, valueAt, withValue } from "../plan/draft";
import { type Field, type FieldSet, reshaped, type WordList } from "../plan/fields";
import { type Quantity, type Scale, shownUnit, toHeld, toShown } from "../plan/quantities";
import { element } from "./element";
import type { Change, Shown } from "./shown";

/** The id of the field at a path. */
export const fieldId = (path: Path): string => path.join("-");

/** A field with its label, and room for a note on it. */
export function fieldView(field: Field, shown: Shown, change: Change): HTMLElement {
  const { asks, label, path } = field;
  const { texts, messages } = shown.language;
  const id = fieldId(path);
  const unit = "number" in asks ? shownUnit(scaleOf(asks.number, path, shown)) : undefined;
  return element(
    "div",
    { class: "field" },
    element(
      "label",
      { for: id },
      texts.labels[label],
      unit && element("span", { class: "unit" }, ` (${messages.units[unit]})`),
    ),
    "number" in asks
      ? numberInput(field, asks.number, shown, change)
      : wordChoice(field, asks.words, shown, change),
    element("p", { class: "note", id: `${id}-note`, "data-field": id }),
  );
}

/**
 * Fields that answer one question together.
 *
 * @param also - Paths that the question is asked under besides those of its fields.
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

function numberInput({ path }: Field, quantity: Quantity, shown: Shown, change: Change): HTMLInputElement {
  const scale = scaleOf(quantity, path, shown);
  const id = fieldId(path);
  const input = element("input", {
    id,
    type: "text",
    inputmode: "decimal",
    autocomplete: "off",
    "aria-describedby": `${id}-note`,
    value: written(valueAt(shown.draft, path), scale, shown),
  });
  input.addEventListener("input", () =>
    change((draft) => withValue(draft, path, typed(input.value, scale)), "typed"),
  );
  return input;
}

/** The scale of a number; lengths of the tank are in the plan's unit. */
const scaleOf = (quantity: Quantity, [part]: Path, { units, draft }: Shown): Scale => ({
  quantity,
  system: units,
  held: (part === "tank" ? draft.tank.unit : undefined) ?? "cm",
});

function written(value: unknown, scale: Scale, { language }: Shown): string {
  if (typeof value !== "number") return value === undefined ? "" : String(value);
  const format = new Intl.NumberFormat(language.messages.language, {
    maximumFractionDigits: 2,
    useGrouping: false,
  });
  return format.format(toShown(value, scale));
}

/** What was typed as the plan holds it; what is no number stays as it is, for the plan's check to refuse. */
function typed(text: string, scale: Scale): number | string | undefined {
  const trimmed = text.trim();
  if (trimmed === "") return undefined;
  const number = Number(trimmed.replace(",", "."));
  return Number.isFinite(number) ? toHeld(number, scale) : trimmed;
}

function wordChoice({ path }: Field, list: WordList, shown: Shown, change: Change): HTMLSelectElement {
  const choices = Object.entries(wordsOf(list, shown));
  const needed = list === "shape" || list === "food" || list === "zone";
  const value = String(valueAt(shown.draft, path) ?? "");
  return choice(
    { path, value, choices, unsaid: needed ? undefined : shown.language.texts.notSaid },
    (word) =>
      isShape(list, word)
        ? change((draft) => withValue(draft, ["tank", "base"], reshaped(draft.tank.base, word)), "done")
        : change((draft) => withValue(draft, path, held(list, word)), "typed"),
  );
}

const isShape = (list: WordList, _word: string): _word is Draft["tank"]["base"]["shape"] => list === "shape";

/** What a choice is among. */
interface Choice {
  readonly path: Path;
  readonly value: string;
  readonly choices: readonly (readonly [word: string, text: string])[];
  /** What it says where nothing is chosen; absent where something must be. */
  readonly unsaid: string | undefined;
}

/** A choice among words; nothing chosen is an empty one. */
export function choice(
  { path, value, choices, unsaid }: Choice,
  choose: (word: string) => void,
): HTMLSelectElement {
  const id = fieldId(path);
  const options = [...(unsaid === undefined ? [] : [["", unsaid] as const]), ...choices].map(([word, text]) =>
    element("option", { value: word, selected: word === value }, text),
  );
  const select = element("select", { id, "aria-describedby": `${id}-note` }, ...options);
  select.addEventListener("change", () => choose(select.value));
  return select;
}

const held = (list: WordList, word: string): string | boolean | undefined => {
  if (word === "") return undefined;
  return list === "yesOrNo" ? word === "true" : word;
};

function wordsOf(
  list: WordList,
  { language: { texts, messages }, draft }: Shown,
): Readonly<Record<string, string>> {
  const { polygon, ...shapes } = texts.shapes;
  switch (list) {
    case "shape":
      return isDrawn(draft) ? { ...shapes, polygon } : shapes;
    case "planting":
      return texts.plantings;
    case "temper":
      return texts.tempers;
    case "yesOrNo":
      return { true: texts.yes, false: texts.no };
    default:
      return messages.words[list];
  }
}

const isDrawn = ({ tank }: Draft) => tank.base.shape === "polygon";
