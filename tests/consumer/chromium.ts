// Opens bundles in Chromium, in a page and in a worker, under a policy that allows scripts of their own place alone.
import { existsSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { type Browser, chromium } from "playwright-core";
import type { Bundle } from "./bundlers";

/** Where Chromium stands, by how it was installed. */
const places = [
  process.env.CHROMIUM ?? "",
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** The program, or undefined where there is none. */
export const chromiumHere = (): string | undefined => places.find((place) => existsSync(place));

export const launched = (executablePath: string): Promise<Browser> =>
  chromium.launch({
    executablePath,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });

/** What came of a bundle in a browser. */
export interface Seen {
  /** What `answers` of the bundle gave, in a page and in a worker. */
  readonly page: unknown;
  readonly worker: unknown;
  /** Errors of the page, and what its policy forbade. */
  readonly complaints: readonly string[];
  /** The files that the page asked for, with their bytes. */
  readonly loaded: ReadonlyMap<string, number>;
}

const policy = "default-src 'none'; img-src data:; script-src 'self'; worker-src 'self'";

const own: Bundle = new Map([
  [
    "",
    '<!doctype html><html lang="en"><link rel="icon" href="data:,"><title>A page</title><script type="module" src="show.js"></script></html>',
  ],
  [
    "show.js",
    `import { answers } from "./page.js";
globalThis.answered = answers();
`,
  ],
  [
    "worker.js",
    `import { answers } from "./page.js";
answers().then((given) => postMessage(given));
`,
  ],
]);

/** Opens a bundle. */
export async function seenIn(browser: Browser, bundle: Bundle): Promise<Seen> {
  const loaded = new Map<string, number>();
  const server = createServer((request, response) => {
    const name = (request.url ?? "/").slice(1);
    const text = own.get(name) ?? bundle.get(name);
    if (bundle.has(name)) loaded.set(name, Buffer.byteLength(bundle.get(name) ?? ""));
    response.writeHead(text === undefined ? 404 : 200, {
      "content-type": name === "" ? "text/html" : "text/javascript",
      "content-security-policy": policy,
    });
    response.end(text);
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  const page = await browser.newPage();
  try {
    const complaints: string[] = [];
    page.on("pageerror", (error) => complaints.push(error.message));
    page.on("console", (message) => complaints.push(message.text()));
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    const ofPage = await page.evaluate("globalThis.answered");
    const atFirst = new Map(loaded);
    return { page: ofPage, worker: await page.evaluate(askWorker), complaints, loaded: atFirst };
  } finally {
    await page.close();
    server.closeAllConnections();
    server.close();
  }
}

const askWorker = `new Promise((given, failed) => {
  const worker = new Worker("/worker.js", { type: "module" });
  worker.onmessage = ({ data }) => given(data);
  worker.onerror = ({ message }) => failed(new Error(message ?? "The worker did not load."));
})`;
