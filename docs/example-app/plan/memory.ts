/** What the browser keeps for this page under a name; undefined where it keeps nothing, or may not. */
export function remembered(name: string): string | undefined {
  try {
    return localStorage.getItem(name) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Keeps something under a name, where the browser allows it. */
export function remember(name: string, text: string): void {
  try {
    localStorage.setItem(name, text);
  } catch {
    // A browser that keeps nothing still judges.
  }
}
