// The list of all species, by family: it needs no JavaScript.
import { allSpecies } from "vivary/catalog";
import type { SpeciesProfile } from "vivary/species";
import { type Family, families } from "../families";
import { formCount, formsOf } from "../forms";
import { link, scientific, text } from "../html";
import { inEach, type SiteLanguage } from "../languages";
import { byName, nameOf } from "../names";
import { type Page, wayTo } from "../page";
import { familyPath, listPath, speciesPath } from "../paths";

/** The list in a language. */
export function speciesList({ code, folder, words }: SiteLanguage): Page {
  const { list } = words;
  const versions = inEach(listPath);
  const path = versions[code];
  const to = (target: string, label: string) => link(wayTo(path, `${folder}${target}`), label);

  const entry = (species: SpeciesProfile) => {
    const forms = formsOf(species).map(({ id, profile }) =>
      to(speciesPath(species.id, id), nameOf(profile, code)),
    );
    const bred =
      forms.length > 0 ? `<br><span class="note">${text(list.forms)}</span> ${forms.join(", ")}` : "";
    const name = to(speciesPath(species.id), nameOf(species, code));
    return `<li>${name} ${scientific(species.taxonomy.name)}${bred}</li>`;
  };
  const section = ({ name, members }: Family) =>
    `<section><h2 id="${name.toLowerCase()}">${to(familyPath(name), name)}</h2>
<ul class="columns">
${byName(members, code).map(entry).join("\n")}
</ul></section>`;

  const intro = list.intro(allSpecies.length, formCount, families.length);
  const body = `<h1>${text(list.title)}</h1>\n<p>${text(intro)}</p>\n${families.map(section).join("\n")}`;
  return { path, language: code, title: list.title, about: list.about, body, versions };
}
