import {
  type AdviceMessages,
  englishAdvice,
  englishPages,
  englishRequirements,
  type PageMessages,
  type RequirementMessages,
} from "../../../src/report";

const [open, close] = ["⟦", "⟧"];

/** English in which every text that a language gives stands between marks. The tag of the language stays. */
export const pseudo: PageMessages = { ...marked(englishPages), language: englishPages.language };

/** The same with what advice says. */
export const pseudoAdvice: AdviceMessages = { ...marked(englishAdvice), language: englishAdvice.language };

function marked<Value>(value: Value): Value {
  if (typeof value === "string") return (value && open + value + close) as Value;
  if (typeof value === "function") {
    return ((...given: readonly unknown[]) => marked(Reflect.apply(value, undefined, given))) as Value;
  }
  if (Array.isArray(value)) return value.map(marked) as Value;
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, held]) => [key, marked(held)])) as Value;
}

/** What of a text stands outside all marks. */
export function unmarked(text: string): string {
  let depth = 0;
  let outside = "";
  for (const letter of text) {
    if (letter === close) depth -= 1;
    if (depth === 0 && letter !== open && letter !== close) outside += letter;
    if (letter === open) depth += 1;
  }
  return outside;
}

/** The same with what is said of official requirements. */
export const pseudoRequirements: RequirementMessages = {
  ...marked(englishRequirements),
  language: englishRequirements.language,
};
