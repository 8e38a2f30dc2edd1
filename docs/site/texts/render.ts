// Markdown of the project as HTML of the site.
import MarkdownIt from "markdown-it";
import anchor from "markdown-it-anchor";
import { withWideTables } from "../html";
import { languages } from "../languages";

/** Where a link leads: given as it stands in the text, and wanted as it shall stand in the page. */
export type Lead = (href: string) => string;

/** The anchor of a heading, as forges and the registry make it. */
const slug = (heading: string): string =>
  heading
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\s_-]/gu, "")
    .replace(/\s/g, "-");

/** Markdown as HTML; tables and programs that are wider than the page scroll by themselves. */
export function rendered(markdown: string, lead: Lead = (href) => href): string {
  const reader = new MarkdownIt().use(anchor, { slugify: slug, tabIndex: false });
  reader.renderer.rules.fence = (tokens, index) =>
    `<pre tabindex="0"><code>${reader.utils.escapeHtml(tokens[index]?.content ?? "")}</code></pre>\n`;
  reader.renderer.rules.link_open = (tokens, index, options, _, self) => {
    const token = tokens[index];
    token?.attrSet("href", lead(token.attrGet("href") ?? ""));
    return self.renderToken(tokens, index, options);
  };
  return withWideTables(reader.render(markdown), languages.en.words.scrolls.table);
}
