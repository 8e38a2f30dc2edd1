// Somebody who visits the example app, and all that the browser complains of meanwhile.
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import type { Browser, BrowserContextOptions, Page } from "playwright-core";

const axe = await readFile(fileURLToPath(import.meta.resolve("axe-core/axe.min.js")), "utf8");

/** How long a visitor waits for something on a busy machine, ms. */
const patience = 120_000;

export interface Visitor {
  readonly page: Page;
  /** What the browser complained of, its policy included. */
  readonly complaints: readonly string[];
  /** The names of the files that came. */
  readonly loaded: readonly string[];
  /** The words of a part of the page, in one line. */
  readonly reads: (selector: string) => Promise<string>;
  /** What is wrong with the page as it stands, for those who cannot see it, and in its width. */
  readonly findsWrong: (state: string) => Promise<readonly string[]>;
  readonly leave: () => Promise<void>;
}

export async function visitor(
  browser: Browser,
  address: string,
  options: BrowserContextOptions = {},
): Promise<Visitor> {
  const context = await browser.newContext({ locale: "en-GB", ...options });
  context.setDefaultTimeout(patience);
  const page = await context.newPage();
  const complaints: string[] = [];
  const loaded: string[] = [];
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("console", (message) => complaints.push(message.text()));
  page.on("response", (response) => loaded.push(response.url().replace(/.*\//, "")));
  await page.goto(address);
  await page.waitForSelector(".verdict h2");
  return {
    page,
    complaints,
    loaded,
    reads: async (selector) => {
      await page.waitForSelector(selector, { state: "attached" });
      const text: string = await page.evaluate(
        `document.querySelector(${JSON.stringify(selector)}).innerText`,
      );
      return text.replaceAll(/\s+/g, " ").trim();
    },
    findsWrong: async (state) => {
      await page.evaluate(`globalThis.axe ?? (() => {${axe}})()`);
      const found: readonly Found[] = await page.evaluate(askAxe);
      const beyond = Number(await page.evaluate("document.documentElement.scrollWidth - innerWidth"));
      return [
        ...found.map(({ id, nodes }) => `${state}: ${id} at ${nodes.map(({ target }) => target).join(", ")}`),
        ...(beyond > 0 ? [`${state}: ${beyond} px too wide`] : []),
      ];
    },
    leave: () => context.close(),
  };
}

interface Found {
  readonly id: string;
  readonly nodes: readonly { readonly target: readonly string[] }[];
}

const askAxe = `axe.run(document, { resultTypes: ["violations"] }).then(({ violations }) => violations)`;
