import { english, german, type Messages } from "vivary/report";
import type { SearchNames } from "vivary/search";
import germanNames from "vivary/search/de";
import { de } from "./de";
import { en } from "./en";
import type { Texts } from "./texts";

/** A language that the app speaks. */
export interface Language {
  /** Names of species are kept by it. */
  readonly code: string;
  /** What it calls itself. */
  readonly name: string;
  readonly texts: Texts;
  /** What the library says. */
  readonly messages: Messages;
  /** Names to search besides the English ones. */
  readonly searched: readonly SearchNames[];
}

/** The languages that the app speaks. */
export const languages = {
  en: { code: "en", name: "English", texts: en, messages: english, searched: [] },
  de: { code: "de", name: "Deutsch", texts: de, messages: german, searched: [germanNames] },
} as const satisfies Readonly<Record<string, Language>>;

export type LanguageCode = keyof typeof languages;

/** Whether the app speaks a language. */
export const isSpoken = (code: string | undefined): code is LanguageCode =>
  code !== undefined && Object.hasOwn(languages, code);
