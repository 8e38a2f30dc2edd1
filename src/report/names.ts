import type { Names } from "../species";

/** What an animal is called in a language; else its scientific name, which every language shares. */
export function nameIn(language: string, names: Names, scientific: string): string {
  const [general = language] = language.split("-");
  const spoken = [language, general].map((tag) => (Object.hasOwn(names, tag) ? names[tag]?.[0] : undefined));
  return spoken.find((name) => name !== undefined) ?? scientific;
}

/** With a capital at its beginning. */
export const capitalised = (text: string, language: string) =>
  text.charAt(0).toLocaleUpperCase(language) + text.slice(1);
