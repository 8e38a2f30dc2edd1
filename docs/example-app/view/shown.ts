import type { UnitSystem } from "vivary/report";
import type { Draft } from "../plan/draft";
import type { Language } from "../texts/languages";

/** What is shown, and how. */
export interface Shown {
  readonly draft: Draft;
  readonly language: Language;
  readonly units: UnitSystem;
}

/**
 * Changes the draft. `typed`: by a field, which shows it already; `done`: by anything else, so that the fields are shown
 * anew. Told is what came of it, if that is worth telling.
 */
export type Change = (change: (draft: Draft) => Draft, how: "typed" | "done", told?: string) => void;
