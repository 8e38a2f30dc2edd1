// The page of a species or form: what the library says of it, and how large it is.
import { sizeChart } from "vivary/report";
import type { SpeciesProfile } from "vivary/species";
import { link, text, wide } from "../html";
import { inEach, type SiteLanguage } from "../languages";
import { nameOf } from "../names";
import { type Page, wayTo } from "../page";
import { familyPath, speciesPath } from "../paths";
import { pageOf } from "./page-of";

/** The page of a profile in a language. */
export function profilePage(
  language: SiteLanguage,
  profile: SpeciesProfile,
  candidates: readonly SpeciesProfile[],
): Page {
  const { code, folder, words, messages } = language;
  const versions = inEach(speciesPath(profile.id, profile.form));
  const path = versions[code];
  const to = (target: string) => wayTo(path, `${folder}${target}`);
  const title = nameOf(profile, code);
  const { family } = profile.taxonomy;
  const picture = wide(words.scrolls.picture, sizeChart([profile], { messages }));
  const body = `${pageOf(profile, language, candidates, (id, form) => to(speciesPath(id, form)))}
<section aria-labelledby="to-scale"><h2 id="to-scale">${text(words.profile.sizes)}</h2>
<figure>${picture}</figure></section>
<p>${text(words.profile.more)} ${link(to(familyPath(family)), family)}</p>`;
  return { path, language: code, title, about: words.profile.about(title), body, versions };
}
