// The languages of the site.
import { englishPages, type PageMessages } from "vivary/report";
import { germanPages } from "vivary/report/de";
import type { LanguageCode } from "./page";
import { english } from "./words/english";
import { german } from "./words/german";
import type { SiteWords } from "./words/words";

/** A language that the site is written in. */
export interface SiteLanguage {
  readonly code: LanguageCode;
  /** The folder of its pages: empty, or a name with a slash. */
  readonly folder: string;
  readonly words: SiteWords;
  /** The words of reports and pictures. */
  readonly messages: PageMessages;
}

export const languages: Readonly<Record<LanguageCode, SiteLanguage>> = {
  en: { code: "en", folder: "", words: english, messages: englishPages },
  de: { code: "de", folder: "de/", words: german, messages: germanPages },
};

export const allLanguages: readonly SiteLanguage[] = Object.values(languages);

/** Where a page that stands in each language is found, by language. */
export const inEach = (path: string): Readonly<Record<LanguageCode, string>> => ({
  en: `${languages.en.folder}${path}`,
  de: `${languages.de.folder}${path}`,
});
