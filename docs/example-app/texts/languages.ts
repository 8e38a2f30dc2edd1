import { english, englishLawgivers, type LawgiverNames, type Messages } from "vivary/report";
import type { SearchNames } from "vivary/search";
import { en } from "./en";
import type { Texts } from "./texts";

/** A language that the app speaks. */
export interface Language {
  /** Names of species are kept by it. */
  readonly code: string;
  readonly texts: Texts;
  /** What the library says. */
  readonly messages: Messages;
  /** Where a tank may stand, in the order in which they are offered. */
  readonly lawgivers: LawgiverNames;
  /** Names to search besides the English ones. */
  readonly searched: readonly SearchNames[];
}

/** The languages that the app speaks, by what each calls itself. */
export const spoken = { en: "English", de: "Deutsch" } as const;

export type LanguageCode = keyof typeof spoken;

/** Whether the app speaks a language. */
export const isSpoken = (code: string | undefined): code is LanguageCode =>
  code !== undefined && Object.hasOwn(spoken, code);

const inEnglish: Language = {
  code: "en",
  texts: en,
  messages: english,
  lawgivers: englishLawgivers,
  searched: [],
};

async function inGerman(): Promise<Language> {
  const [{ de }, { german, germanLawgivers }, names] = await Promise.all([
    import("./de"),
    import("vivary/report/de"),
    import("vivary/search/de"),
  ]);
  return { code: "de", texts: de, messages: german, lawgivers: germanLawgivers, searched: [names.default] };
}

/** A language, loaded when it is first asked for; English where it does not come. */
export const languageOf = (code: LanguageCode): Promise<Language> =>
  code === "de" ? inGerman().catch(() => inEnglish) : Promise.resolve(inEnglish);
