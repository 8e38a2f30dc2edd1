// Visits pages of a site in Chromium, from a folder and under an address within another site.
import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import { extname, join, normalize } from "node:path";
import { pathToFileURL } from "node:url";
import type { AxeResults } from "axe-core";
import type { Browser, Page } from "playwright-core";

const axe = createRequire(import.meta.url).resolve("axe-core/axe.min.js");

/** Where a site can be visited. */
export interface Place {
  readonly name: string;
  readonly address: string;
  readonly close: () => void;
}

export const inFolder = (folder: string): Place => ({
  name: "from a folder",
  address: `${pathToFileURL(folder).href}/`,
  close: () => {},
});

const types: Readonly<Record<string, string>> = {
  ".html": "text/html",
  ".css": "text/css",
  ".js": "text/javascript",
  ".svg": "image/svg+xml",
};

/** The site served below `/some/where/`; nothing else is there. */
export async function underPath(folder: string): Promise<Place> {
  const below = "/some/where/";
  const server = createServer(async (request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? "/", "http://here").pathname);
    const file = path.startsWith(below) ? normalize(path.slice(below.length)) : "..";
    const held = await readFile(join(folder, file)).catch(() => undefined);
    response.writeHead(held ? 200 : 404, { "content-type": types[extname(file)] ?? "text/plain" });
    response.end(held);
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const { port } = server.address() as AddressInfo;
  return {
    name: "under an address",
    address: `http://127.0.0.1:${port}${below}`,
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}

/** How a page is looked at. */
export interface Look {
  readonly width: number;
  readonly dark: boolean;
}

/** Opens a page and answers what it, its scripts and its files complain about beside what `see` finds. */
export async function visited(
  browser: Browser,
  url: string,
  { width, dark }: Look,
  see: (page: Page) => Promise<readonly string[]>,
): Promise<readonly string[]> {
  const page = await browser.newPage({
    viewport: { width, height: 800 },
    colorScheme: dark ? "dark" : "light",
  });
  const complaints: string[] = [];
  page.on("pageerror", ({ message }) => complaints.push(message));
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  page.on("requestfailed", (request) => complaints.push(`${request.url()} did not load`));
  try {
    await page.goto(url);
    const seen = await see(page);
    return [...complaints, ...seen];
  } catch (error) {
    return [...complaints, String(error)];
  } finally {
    await page.close();
  }
}

/** What axe finds wrong with a page; a line each. */
export async function axeFindings(page: Page): Promise<readonly string[]> {
  await page.addScriptTag({ path: axe });
  const { violations } = (await page.evaluate("axe.run({ preload: false })")) as AxeResults;
  return violations.map(({ id, help, nodes }) => `${id}: ${help}: ${nodes[0]?.html.slice(0, 160)}`);
}

/** Whether a page has to be moved sideways to be read. */
export async function sideways(page: Page): Promise<readonly string[]> {
  const over = Number(await page.evaluate("document.documentElement.scrollWidth - innerWidth"));
  return over > 0 ? [`is ${over} px wider than the window`] : [];
}

/** What is wrong with the search of a page: what is typed has to lead to the page of a species by the keyboard alone. */
export async function searchFaults(page: Page, typed: string, wanted: string): Promise<readonly string[]> {
  await page.getByRole("searchbox").fill(typed);
  const status = await page.getByRole("status").textContent();
  await page.keyboard.press("Enter");
  await page.waitForURL((url) => url.pathname.includes("/species/"), { timeout: 10_000 }).catch(() => {});
  const heading = await page.getByRole("heading", { level: 1 }).first().textContent();
  return page.url().endsWith(wanted) && status && heading
    ? []
    : [`${typed} leads to ${page.url()} (${heading}), having said "${status}"`];
}
