// What the page of a species or form says.
import { profileMarkdown } from "vivary/report";
import type { SpeciesProfile } from "vivary/species";
import type { SiteLanguage } from "../languages";
import { rendered } from "../texts/render";

/** Where the page of a species or form stands, from this one. */
export type SpeciesLink = (id: string, form?: string) => string;

/** The text of the page as HTML, with a heading of the first level. */
export const pageOf = (profile: SpeciesProfile, { messages }: SiteLanguage, _linkTo: SpeciesLink): string =>
  rendered(profileMarkdown(profile, { messages }));
