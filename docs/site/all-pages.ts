// The pages of the site but for the reference.
import { allSpecies } from "vivary/catalog";
import type { SpeciesProfile } from "vivary/species";
import { families } from "./families";
import { formsOf } from "./forms";
import { allLanguages } from "./languages";
import type { SiteParts } from "./layout";
import type { Page } from "./page";
import { familyPage } from "./pages/family-page";
import { homePage } from "./pages/home";
import { profilePage } from "./pages/profile-page";
import { speciesList } from "./pages/species-list";
import { guides, otherTexts } from "./texts/files";
import { guidesPage, textPages } from "./texts/pages";

/** Texts, lists and families. */
export async function commonPages(parts: SiteParts): Promise<readonly Page[]> {
  const ownGuides = await guides();
  return [
    guidesPage(ownGuides),
    ...textPages([...ownGuides, ...(await otherTexts())]),
    ...allLanguages.flatMap((language) => [
      homePage(language, parts),
      speciesList(language),
      ...families.map((family) => familyPage(language, family)),
    ]),
  ];
}

/** The profiles of all species and forms. */
export const allProfiles: readonly SpeciesProfile[] = allSpecies.flatMap((species) => [
  species,
  ...formsOf(species).map(({ profile }) => profile),
]);

/** The pages of a profile, one a language, with company from the catalog. */
export const profilePages = (profile: SpeciesProfile): readonly Page[] =>
  allLanguages.map((language) => profilePage(language, profile, allSpecies));
