import type { PartialRange } from "../../ranges";
import type { AdultLength, Figures, TraitPath } from "../../species";
import { traitDefinitions } from "../../species/inner";
import type { Figure, WriteQuantity } from "../figure";
import type { Messages } from "../messages/messages";
import { beyond } from "../messages/sentences";
import { wordKinds } from "./word-kinds";

/** A figure or a span, in the unit of its trait. */
type Sized = number | PartialRange;

/** A resolved value of any trait in words. */
export function traitText(path: TraitPath, value: unknown, messages: Messages, write: WriteQuantity): string {
  const { unit, way } = traitDefinitions[path];
  const { profile } = messages;
  const withUnit = (figure: Figure) => write({ ...figure, ...(unit && { unit }) });
  const size = (sized: Sized) => withUnit(typeof sized === "number" ? { value: sized } : sized);
  const item = (one: unknown) => itemText(path, one, messages, size);
  switch (way) {
    case "figures":
      return figuresText(value as Figures<PartialRange>, messages, withUnit);
    case "lengths":
      return (value as readonly AdultLength[])
        .map(({ length, total: _, ...of }) => profile.length(size(length), of))
        .join("; ");
    case "rooms":
      return (value as readonly unknown[]).map(item).join("; ");
    case "ages":
      return item(value);
    case "all": {
      const items = value as readonly unknown[];
      return items.length > 0 ? items.map(item).join("; ") : profile.none;
    }
    case "one":
      return item(value);
  }
}

function figuresText(
  { kept, standIn, precision: _, ...others }: Figures<PartialRange>,
  { profile: { figure: told }, ranges }: Messages,
  span: (range: Figure) => string,
): string {
  const further = Object.entries(others).flatMap(([meaning, range]) => {
    if (!range) return [];
    return [
      told(meaning === "limit" ? beyond(range, span, ranges) : span(range), meaning as keyof typeof others),
    ];
  });
  return [...(standIn ? [] : [told(span(kept), undefined)]), ...further].join("; ");
}

function itemText(
  path: TraitPath,
  item: unknown,
  messages: Messages,
  size: (sized: Sized) => string,
): string {
  const { values, yes, no, none } = messages.profile;
  if (item === "none") return none;
  const write = values[path] as ((value: unknown, size: (sized: Sized) => string) => string) | undefined;
  if (write) return write(item, size);
  if (typeof item === "number") return size(item);
  if (typeof item === "boolean") return item ? yes : no;
  return wordText(path, String(item), messages);
}

/** A word in the language, if the trait is answered in words; else the text as it stands. */
function wordText(path: TraitPath, word: string, { words }: Messages): string {
  const kind = wordKinds[path];
  const known: Readonly<Record<string, string>> = kind ? words[kind] : {};
  return Object.hasOwn(known, word) ? (known[word] ?? word) : word;
}
