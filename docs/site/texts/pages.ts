// The pages of texts: guides, rules, the state of the evidence and what else the project says in Markdown.
import { posix } from "node:path";
import { link } from "../html";
import { languages } from "../languages";
import { type Page, wayTo } from "../page";
import { plainFiles, type TextFile } from "./files";
import { rendered } from "./render";

/** The first heading of a text. */
const titleOf = ({ file, markdown }: TextFile): string => {
  const [, title] = /^# (.+)$/m.exec(markdown) ?? [];
  if (title === undefined) throw new Error(`${file} has no heading.`);
  return title;
};

/** The first paragraph below it, as far as its first sentence, without marks. */
const aboutOf = ({ markdown }: TextFile): string => {
  const [, paragraph = ""] = /^# .+\n+((?:.+\n)+)/m.exec(markdown) ?? [];
  const plain = paragraph.replaceAll(/\[([^\]]+)\]\([^)]*\)/g, "$1").replaceAll(/[*`]/g, "");
  return plain
    .replaceAll("\n", " ")
    .replace(/^(.*?[.:])\s.*$/s, "$1")
    .trim();
};

/** Pages of texts. A link from one to another leads to its page; one to a file that has none is an error. */
export function textPages(texts: readonly TextFile[]): readonly Page[] {
  const places = new Map([
    ...texts.map(({ file, path }) => [file, path] as const),
    ...Object.entries(plainFiles),
  ]);
  return texts.map((text) => ({
    path: text.path,
    language: "en",
    title: titleOf(text),
    about: aboutOf(text),
    body: rendered(text.markdown, (href) => led(text, href, places)),
  }));
}

function led({ file, path }: TextFile, href: string, places: ReadonlyMap<string, string>): string {
  if (/^(https?:|#)/.test(href)) return href;
  const [target = "", anchor] = href.split("#");
  const place = places.get(posix.join(posix.dirname(file), target));
  if (place === undefined) throw new Error(`${file} links to ${href}, which is not in the site.`);
  return wayTo(path, place) + (anchor === undefined ? "" : `#${anchor}`);
}

/** The page that lists the guides, the first steps first. */
export function guidesPage(guides: readonly TextFile[]): Page {
  const { guides: title } = languages.en.words;
  const path = "guides/index.html";
  const ordered = [...guides].sort((a, b) => rank(a) - rank(b) || titleOf(a).localeCompare(titleOf(b)));
  const items = ordered.map(
    (guide) => `<li><p>${link(wayTo(path, guide.path), titleOf(guide))}<br>${aboutOf(guide)}</p></li>`,
  );
  const body = `<h1>${title}</h1>\n<ul>\n${items.join("\n")}\n</ul>`;
  return { path, language: "en", title, about: "How to begin, step by step.", body };
}

const rank = ({ file }: TextFile) => (file.endsWith("first-verdict.md") ? 0 : 1);
