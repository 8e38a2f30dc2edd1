import { type Child, element } from "./element";

/**
 * A control with its label, and room for a note on it.
 *
 * @param limits - What the note says of a number that is too small or too great.
 */
export function labelled(
  control: HTMLInputElement | HTMLSelectElement,
  label: string,
  unit?: string,
  limits?: string,
): HTMLElement {
  const { id } = control;
  const ofUnit: Child = unit !== undefined && element("span", { class: "unit" }, ` (${unit})`);
  control.setAttribute("aria-describedby", `${id}-note`);
  return element(
    "div",
    { class: "field" },
    element("label", { for: id }, label, ofUnit),
    control,
    element("p", { class: "note", id: `${id}-note`, "data-field": id, "data-limits": limits }),
  );
}
