/** Attributes by name; those that are false or undefined are left out, true stands for an empty one. */
type Attributes = Readonly<Record<string, string | boolean | undefined>>;

/** What an element may hold; what is false or undefined is left out. */
export type Child = Node | string | false | undefined;

/** An element with its attributes and what it holds. Text is text, whatever it contains. */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== undefined && value !== false) made.setAttribute(name, value === true ? "" : value);
  }
  made.append(...children.filter((child) => child !== undefined && child !== false));
  return made;
}

/** A button that does something. */
export function button(text: string, act: () => void, attributes: Attributes = {}): HTMLButtonElement {
  const made = element("button", { type: "button", ...attributes }, text);
  made.addEventListener("click", act);
  return made;
}

/** A list, absent where it would be empty. */
export const listOf = (items: readonly (Node | string)[], attributes: Attributes = {}): Child =>
  items.length > 0 && element("ul", attributes, ...items.map((item) => element("li", {}, item)));

/** Puts other contents into an element. What was unfolded stays so, and the focus stays where it was, or near. */
export function refill(container: Element, children: readonly Child[]): void {
  const refocus = container.contains(document.activeElement) ? keptFocus(container) : undefined;
  const unfolded = [...container.querySelectorAll("details[open]")].map(({ id }) => id);
  container.replaceChildren(...children.filter((child) => child !== undefined && child !== false));
  for (const id of unfolded) document.getElementById(id)?.setAttribute("open", "");
  refocus?.();
}

/**
 * Gives the focus back once the contents are others: to what has the same id, else to the like of it that has moved into its
 * place, such as the next button of a list, else to the heading.
 */
function keptFocus(container: Element): () => void {
  const held = document.activeElement;
  const controls = () => [...container.querySelectorAll<HTMLElement>("button, input, select, summary, a")];
  const place = controls().findIndex((control) => control.isSameNode(held));
  return () => {
    const next = controls()[place];
    const successor =
      document.getElementById(held?.id ?? "") ??
      (next?.textContent === held?.textContent ? next : undefined) ??
      container.closest("section")?.querySelector<HTMLElement>("[tabindex='-1']");
    successor?.focus({ preventScroll: true });
  };
}
