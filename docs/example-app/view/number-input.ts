import { type Path, valueAt, withValue } from "../plan/draft";
import { type Scale, toHeld, toShown } from "../plan/quantities";
import { numberIn, plainFigure } from "../texts/numbers";
import { element } from "./element";
import type { Change, Shown } from "./shown";

/** A field for a number, in the reader's language and units. */
export function numberInput(
  id: string,
  path: Path,
  scale: Scale,
  shown: Shown,
  change: Change,
): HTMLInputElement {
  const { language } = shown.language.messages;
  const input = element("input", {
    id,
    type: "text",
    inputmode: "decimal",
    autocomplete: "off",
    value: written(valueAt(shown.draft, path), scale, language),
  });
  input.addEventListener("input", () =>
    change((draft) => withValue(draft, path, typed(input.value, scale, language)), "typed"),
  );
  return input;
}

function written(value: unknown, scale: Scale, language: string): string {
  if (typeof value !== "number") return value === undefined ? "" : String(value);
  return plainFigure(toShown(value, scale), language);
}

/** What was typed as the plan holds it; what is no number stays as it is, for the plan's check to refuse. */
function typed(text: string, scale: Scale, language: string): number | string | undefined {
  const trimmed = text.trim();
  if (trimmed === "") return undefined;
  const number = numberIn(trimmed, language);
  return number === undefined ? trimmed : toHeld(number, scale);
}
