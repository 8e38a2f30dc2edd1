// The pages of the site but for the reference and those of profiles: texts, lists and families.
import { families } from "./families";
import { allLanguages } from "./languages";
import type { SiteParts } from "./layout";
import type { Page } from "./page";
import { familyPage } from "./pages/family-page";
import { homePage } from "./pages/home";
import { speciesList } from "./pages/species-list";
import { guides, otherTexts } from "./texts/files";
import { guidesPage, textPages } from "./texts/pages";

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
