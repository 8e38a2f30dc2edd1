// What the page of a species or form says.
import { allSpecies } from "vivary/catalog";
import { citationsOf, recordById } from "vivary/evidence";
import { speciesPage } from "vivary/report";
import type { SpeciesProfile } from "vivary/species";
import { withWideTables } from "../html";
import type { SiteLanguage } from "../languages";

/** Where the page of a species or form of the catalog stands, from this one. */
export type SpeciesLink = (id: string, form?: string) => string;

const known: ReadonlySet<string> = new Set(allSpecies.map(({ id }) => id));

/** The text of the page as HTML, with a heading of the first level; `candidates` are those among which company is sought. */
export function pageOf(
  profile: SpeciesProfile,
  { messages, words }: SiteLanguage,
  candidates: readonly SpeciesProfile[],
  linkTo: SpeciesLink,
): string {
  const record = recordById(profile.id);
  const html = speciesPage(profile, {
    messages,
    record,
    candidates,
    sources: record && citationsOf(record),
    format: "html",
    linkTo: (id, form) => (known.has(id) ? linkTo(id, form) : undefined),
  });
  return withWideTables(html, words.scrolls.table);
}
