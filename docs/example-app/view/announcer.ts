import { element } from "./element";

/** How long nothing must change before something is said, ms: nobody is interrupted while typing. */
const pause = 700;

/** Tells those who do not see the page what changed on it. */
export interface Announcer {
  readonly element: HTMLElement;
  /** Says something once it has been quiet for a moment, and nothing twice in a row. */
  readonly say: (text: string) => void;
}

export function announcer(): Announcer {
  const line = element("p", { class: "unseen", role: "status" });
  let timer: ReturnType<typeof setTimeout> | undefined;
  return {
    element: line,
    say: (text) => {
      clearTimeout(timer);
      timer = setTimeout(() => {
        if (line.textContent !== text) line.textContent = text;
      }, pause);
    },
  };
}
