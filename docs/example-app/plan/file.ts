import type { Draft } from "./draft";

/** Gives a plan to the browser to save as a file. */
export function saveAs(name: string, draft: Draft): void {
  const file = new Blob([JSON.stringify(draft, null, 2)], { type: "application/json" });
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  URL.revokeObjectURL(link.href);
}

/** Copies a text for pasting elsewhere; false where the browser does not allow it. */
export async function copied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
