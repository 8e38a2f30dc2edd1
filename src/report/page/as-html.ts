import { escapedXml as text } from "../pictures/svg";
import type { LinkTo } from "./as-markdown";
import type { Cell, NamedAnimal, Page, Part } from "./parts";

/**
 * A page as a fragment of HTML that is XML as well: one article with headings, lists and tables, without styles and
 * scripts. Headings begin at the first level; each section has an id.
 */
export function asHtml(
  { title, scientific, belongs, lead, sections, language }: Page,
  linkTo: LinkTo,
): string {
  return `${[
    `<article lang="${text(language)}">`,
    "<header>",
    `<h1>${text(title)}</h1>`,
    `<p>${name(scientific)} ${text(belongs)}</p>`,
    "</header>",
    ...lead.map((part) => partHtml(part, linkTo)),
    ...sections.flatMap(({ id, heading, parts }) => [
      `<section id="${text(id)}" aria-labelledby="${text(id)}-heading">`,
      `<h2 id="${text(id)}-heading">${text(heading)}</h2>`,
      ...parts.map((part) => partHtml(part, linkTo)),
      "</section>",
    ]),
    "</article>",
  ].join("\n")}\n`;
}

function partHtml(part: Part, linkTo: LinkTo): string {
  const cell = (one: Cell) =>
    typeof one === "string"
      ? text(one)
      : one
          .map((run) => (typeof run === "string" ? run.replace(/\S(.*\S)?/s, text) : animal(run, linkTo)))
          .join("");
  switch (part.as) {
    case "paragraph":
      return `<p>${text(part.text)}</p>`;
    case "list":
      return [
        ...heading(part.title),
        "<ul>",
        ...part.items.map((item) => `<li>${cell(item)}</li>`),
        "</ul>",
      ].join("\n");
    case "terms":
      return [
        ...heading(part.title),
        "<dl>",
        ...part.rows.map(([term, said]) => `<dt>${text(term)}</dt>\n<dd>${text(said)}</dd>`),
        "</dl>",
      ].join("\n");
    case "table":
      return [
        "<table>",
        `<caption>${text(part.title)}</caption>`,
        "<thead>",
        `<tr>${part.columns.map((column) => `<th scope="col">${text(column)}</th>`).join("")}</tr>`,
        "</thead>",
        "<tbody>",
        ...part.rows.map(([first = "", ...further]) => {
          const others = further.map((one) => `<td>${cell(one)}</td>`);
          return `<tr><th scope="row">${cell(first)}</th>${others.join("")}</tr>`;
        }),
        "</tbody>",
        "</table>",
      ].join("\n");
  }
}

const heading = (title: string | undefined) => (title ? [`<h3>${text(title)}</h3>`] : []);

function animal({ name: vernacular, scientific, id, form }: NamedAnimal, linkTo: LinkTo): string {
  const to = linkTo(id, form);
  const named = to === undefined ? text(vernacular) : `<a href="${text(to)}">${text(vernacular)}</a>`;
  return scientific ? `${named} (${name(scientific)})` : named;
}

const name = (scientific: string) => `<i lang="la">${text(scientific)}</i>`;
