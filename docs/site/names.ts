// What animals are called on the site.
import type { SpeciesProfile } from "vivary/species";
import type { LanguageCode } from "./page";

/** The commonest vernacular name with a capital; where a language has none, the scientific one. */
export function nameOf({ names, taxonomy }: SpeciesProfile, language: LanguageCode): string {
  const name = names?.[language]?.[0] ?? taxonomy.name;
  return name.charAt(0).toLocaleUpperCase(language) + name.slice(1);
}

/** Those of a list by name, as the language sorts them. */
export const byName = (profiles: readonly SpeciesProfile[], language: LanguageCode) =>
  [...profiles].sort((a, b) => nameOf(a, language).localeCompare(nameOf(b, language), language));
