// Follows every link of a site in a folder.
import { readFile } from "node:fs/promises";
import { join, posix } from "node:path";
import { type HTMLElement, parse } from "node-html-parser";
import { glob } from "tinyglobby";

/** A page with where its links lead and what can be linked to in it. */
interface Linking {
  readonly page: string;
  readonly hrefs: readonly string[];
  readonly anchors: ReadonlySet<string>;
}

const attribute = (elements: readonly HTMLElement[], name: string) =>
  elements.flatMap((element) => element.getAttribute(name) ?? []);

function linking(page: string, html: string): Linking {
  const root = parse(html, { comment: false, blockTextElements: { script: true, style: true } });
  return {
    page,
    hrefs: [
      ...attribute(root.querySelectorAll("[href]"), "href"),
      ...attribute(root.querySelectorAll("[src]"), "src"),
      ...attribute(root.querySelectorAll("[data-species]"), "data-species"),
    ],
    anchors: new Set(attribute(root.querySelectorAll("[id]"), "id")),
  };
}

/** Links of the pages of a folder that lead nowhere, or that would not under another address; a line each. */
export async function brokenLinks(folder: string): Promise<readonly string[]> {
  const files = await glob("**", { cwd: folder });
  const there: ReadonlySet<string> = new Set(files);
  const pages = files.filter((file) => /\.(html|svg)$/.test(file)).sort();
  const all = await Promise.all(
    pages.map(async (page) => linking(page, await readFile(join(folder, page), "utf8"))),
  );
  const anchorsOf = new Map(all.map(({ page, anchors }) => [page, anchors]));
  const wrong = ({ page }: Linking, href: string): string | undefined => {
    if (/^(https?:|data:|mailto:)/.test(href)) return undefined;
    if (href.startsWith("/")) return "holds at one address only";
    const [way = "", anchor] = href.split("#");
    const target = way === "" ? page : posix.join(posix.dirname(page), decodeURI(way));
    if (!there.has(target)) return "leads to no file";
    if (anchor && !anchorsOf.get(target)?.has(decodeURIComponent(anchor))) return "leads to no anchor";
    return undefined;
  };
  return all.flatMap((one) =>
    [...new Set(one.hrefs)].flatMap((href) => {
      const said = wrong(one, href);
      return said ? [`${one.page}: ${href} ${said}`] : [];
    }),
  );
}
