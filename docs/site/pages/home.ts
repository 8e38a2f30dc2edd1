// The first page, in each language.
import { allSpecies } from "vivary/catalog";
import { families } from "../families";
import { formCount } from "../forms";
import { link, text } from "../html";
import { inEach, type SiteLanguage } from "../languages";
import type { SiteParts } from "../layout";
import { type Page, wayTo } from "../page";
import { listPath } from "../paths";

/** The first page in a language. */
export function homePage({ code, folder, words }: SiteLanguage, { example }: SiteParts): Page {
  const { welcome } = words;
  const versions = inEach("index.html");
  const path = versions[code];
  const to = (target: string, label: string) => link(wayTo(path, target), label);
  const english = (target: string, label: string) => {
    const foreign = code === "en" ? "" : ' hreflang="en"';
    return link(wayTo(path, target), words.inEnglish ? `${label} (${words.inEnglish})` : label, foreign);
  };
  const [lead = "", ...further] = welcome.paragraphs;
  const kinds = [
    kind(welcome.keepers, welcome.keepersText, [
      to(`${folder}${listPath}`, words.list.title),
      ...(example ? [to("example/index.html", words.example)] : []),
    ]),
    kind(welcome.developers, welcome.developersText, [
      english("guides/first-verdict.html", "A first verdict"),
      english("readme.html", words.package),
      english("api/index.html", words.reference),
    ]),
    kind(welcome.researchers, welcome.researchersText, [
      english("guides/research.html", "For researchers"),
      english("sources.html", words.sources),
    ]),
    kind(welcome.doubt, welcome.doubtText, [
      english("evidence.html", words.evidence),
      english("guides/what-bounds-mean.html", "What bounds mean"),
    ]),
  ];
  const counts = words.list.intro(allSpecies.length, formCount, families.length);
  const body = [
    `<h1>${text(words.site)}</h1>`,
    `<p class="lead">${text(lead)}</p>`,
    ...further.map((paragraph) => `<p>${text(paragraph)}</p>`),
    `<p>${text(counts)}</p>`,
    `<div class="kinds">\n${kinds.join("\n")}\n</div>`,
  ].join("\n");
  return { path, language: code, title: words.site, about: welcome.about, body, versions };
}

const kind = (heading: string, said: string, links: readonly string[]) =>
  `<section><h2>${text(heading)}</h2>\n<p>${text(said)}</p>\n<ul>${links.map((one) => `<li>${one}</li>`).join("\n")}</ul></section>`;
