/** Tells the style sheet how high the answer is, which stays in sight: what gets the focus is not scrolled beneath it. */
export function keepClear(verdict: HTMLElement): void {
  const height = verdict.querySelector<HTMLElement>(".outcome")?.offsetHeight ?? 0;
  document.documentElement.style.setProperty("--answer", `${height}px`);
}
