// Every page of the site but the reference, one after another: a profile's page takes time.
import { allSpecies } from "vivary/catalog";
import { families } from "./families";
import { formsOf } from "./forms";
import { allLanguages } from "./languages";
import type { SiteParts } from "./layout";
import type { Page } from "./page";
import { familyPage } from "./pages/family-page";
import { homePage } from "./pages/home";
import { speciesList } from "./pages/species-list";
import { speciesPage } from "./pages/species-page";
import { guides, otherTexts } from "./texts/files";
import { guidesPage, textPages } from "./texts/pages";

export async function* allPages(parts: SiteParts): AsyncGenerator<Page> {
  const ownGuides = await guides();
  yield guidesPage(ownGuides);
  yield* textPages([...ownGuides, ...(await otherTexts())]);
  for (const language of allLanguages) {
    yield homePage(language, parts);
    yield speciesList(language);
    for (const family of families) yield familyPage(language, family);
    for (const species of allSpecies) {
      yield speciesPage(language, species);
      for (const { profile } of formsOf(species)) yield speciesPage(language, profile);
    }
  }
}
