// Pieces of HTML.
import MarkdownIt from "markdown-it";

/** Text as HTML, in a tag or an attribute. */
export const text: (plain: string) => string = new MarkdownIt().utils.escapeHtml;

/** A link to another page of the site, or an address. */
export const link = (href: string, label: string, attributes = ""): string =>
  `<a href="${text(href)}"${attributes}>${text(label)}</a>`;

/** A scientific name. */
export const scientific = (name: string): string => `<i lang="la">${text(name)}</i>`;

/** Something that may be wider than the page: it scrolls by itself, with the keyboard too. */
export const wide = (label: string, held: string): string =>
  `<div class="wide" role="group" aria-label="${text(label)}" tabindex="0">${held}</div>`;

/** HTML whose tables scroll by themselves. */
export const withWideTables = (html: string, label: string): string =>
  html.replaceAll(/<table>.*?<\/table>/gs, (table) => wide(label, table));
