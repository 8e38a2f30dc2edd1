// What every page of the site stands in: head, menu, search and foot.
import { dataVersion } from "vivary/evidence";
import packageJson from "../../package.json";
import { link, text } from "./html";
import { allLanguages, languages, type SiteLanguage } from "./languages";
import { type Page, wayTo } from "./page";
import { listPath } from "./paths";

/** What may stand in the menu or not. */
export interface SiteParts {
  /** Whether the example app was built. */
  readonly example: boolean;
}

/** A page as a document. */
export function documentOf(page: Page, parts: SiteParts): string {
  const { path, language, title, about, body } = page;
  const { words, folder } = languages[language];
  const to = (target: string) => text(wayTo(path, target));
  const heading = title === words.site ? title : `${title} – ${words.site}`;
  return `<!doctype html>
<html lang="${language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${text(heading)}</title>
<meta name="description" content="${text(about)}">
<link rel="icon" href="data:,">
<link rel="stylesheet" href="${to("assets/style.css")}">
${alternates(page)}
<script src="${to(`assets/search-${language}.js`)}" defer></script>
</head>
<body>
<a class="skip" href="#text">${text(words.skip)}</a>
<header class="top">
<p class="brand">${link(wayTo(path, `${folder}index.html`), words.site)}</p>
<nav aria-label="${text(words.menu)}">
<ul>
${menu(page, parts).join("\n")}
</ul>
</nav>
<div class="search" data-species="${to(`${folder}${listPath}`)}" data-label="${text(words.search.label)}" data-found="${text(words.search.found)}" data-more="${text(words.search.more)}" data-none="${text(words.search.none)}"></div>
</header>
<main id="text">
${body}
</main>
<footer>
${foot(page)}
</footer>
</body>
</html>
`;
}

function alternates({ path, versions }: Page): string {
  return allLanguages
    .flatMap(({ code }) =>
      versions
        ? [`<link rel="alternate" hreflang="${code}" href="${text(wayTo(path, versions[code]))}">`]
        : [],
    )
    .join("\n");
}

/** A link in a menu; it says where one is, and of a page in English alone that it is. */
function entry({ path, language }: Page, target: string, label: string, english = false): string {
  const here = path === target ? ' aria-current="page"' : "";
  const foreign = english && language !== "en" ? ' hreflang="en"' : "";
  const note = foreign ? ` (${languages[language].words.inEnglish})` : "";
  return `<li>${link(wayTo(path, target), label + note, here + foreign)}</li>`;
}

function menu(page: Page, { example }: SiteParts): readonly string[] {
  const { words, folder } = languages[page.language];
  return [
    entry(page, `${folder}${listPath}`, words.species),
    ...(example ? [entry(page, "example/index.html", words.example)] : []),
    entry(page, "guides/index.html", words.guides, true),
    entry(page, "rules.html", words.rules, true),
    entry(page, "api/index.html", words.reference, true),
    ...otherLanguages(page),
  ];
}

const otherLanguages = ({ path, language, versions }: Page): readonly string[] =>
  allLanguages
    .filter(({ code }) => code !== language)
    .map(({ code, folder, words }: SiteLanguage) => {
      const target = versions?.[code] ?? `${folder}index.html`;
      return `<li>${link(wayTo(path, target), words.thisLanguage, ` lang="${code}" hreflang="${code}"`)}</li>`;
    });

function foot(page: Page): string {
  const { words } = languages[page.language];
  const entries = [
    entry(page, "readme.html", words.package, true),
    entry(page, "evidence.html", words.evidence, true),
    entry(page, "sources.html", words.sources, true),
    entry(page, "notice.html", words.terms, true),
    entry(page, "developers.html", words.contributing, true),
  ];
  return `<p>${text(words.closing)}</p>
<ul>
${entries.join("\n")}
</ul>
<p>${text(words.version(packageJson.version, dataVersion))}</p>`;
}
