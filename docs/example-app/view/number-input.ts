import { type Path, valueAt, withValue } from "../plan/draft";
import { type Scale, toHeld, toShown } from "../plan/quantities";
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
  const input = element("input", {
    id,
    type: "text",
    inputmode: "decimal",
    autocomplete: "off",
    value: written(valueAt(shown.draft, path), scale, shown.language.messages.language),
  });
  input.addEventListener("input", () =>
    change((draft) => withValue(draft, path, typed(input.value, scale)), "typed"),
  );
  return input;
}

function written(value: unknown, scale: Scale, language: string): string {
  if (typeof value !== "number") return value === undefined ? "" : String(value);
  const format = new Intl.NumberFormat(language, { maximumFractionDigits: 2, useGrouping: false });
  return format.format(toShown(value, scale));
}

/** What was typed as the plan holds it; what is no number stays as it is, for the plan's check to refuse. */
function typed(text: string, scale: Scale): number | string | undefined {
  const trimmed = text.trim();
  if (trimmed === "") return undefined;
  const number = Number(trimmed.replace(",", "."));
  return Number.isFinite(number) ? toHeld(number, scale) : trimmed;
}
