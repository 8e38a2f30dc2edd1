// The page of a family: its species, drawn to scale, and the water that each is kept in.
import { rangeChart, sizeChart } from "vivary/report";
import type { Family } from "../families";
import { link, scientific, text, wide } from "../html";
import { inEach, type SiteLanguage } from "../languages";
import { byName, nameOf } from "../names";
import { type Page, wayTo } from "../page";
import { familyPath, speciesPath } from "../paths";

/** The page of a family in a language. */
export function familyPage(
  { code, folder, words, messages }: SiteLanguage,
  { name, order, members }: Family,
): Page {
  const versions = inEach(familyPath(name));
  const path = versions[code];
  const sorted = byName(members, code);
  const picture = (svg: string) => `<figure>${wide(words.scrolls.picture, svg)}</figure>`;
  const entries = sorted.map((species) => {
    const to = wayTo(path, `${folder}${speciesPath(species.id)}`);
    return `<li>${link(to, nameOf(species, code))} ${scientific(species.taxonomy.name)}</li>`;
  });
  const ranges = (["water.temperature", "water.pH", "water.generalHardness"] as const).map((trait) =>
    picture(rangeChart(sorted, trait, { messages })),
  );
  const body = `<h1>${text(name)}</h1>
<p>${text(words.family.order)}: ${text(order)}</p>
<ul class="columns">
${entries.join("\n")}
</ul>
<h2>${text(words.family.sizes)}</h2>
${picture(sizeChart(sorted, { messages }))}
<h2>${text(words.family.ranges)}</h2>
${ranges.join("\n")}`;
  return { path, language: code, title: name, about: words.family.about(name), body, versions };
}
