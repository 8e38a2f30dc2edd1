// Checks the site that docs/site/build.ts and typedoc wrote: links, accessibility, search, and that nothing complains.
import { readdirSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { site } from "../docs/site/site";
import { chromiumHere, launched } from "./consumer/chromium";
import { brokenLinks } from "./site/links";
import {
  axeFindings,
  inFolder,
  type Look,
  type Place,
  searchFaults,
  sideways,
  underPath,
  visited,
} from "./site/visits";

/** So many problems of a check are told. */
const most = 40;

/** A page of each kind. */
const kinds = [
  "index.html",
  "de/index.html",
  "species/index.html",
  "de/species/index.html",
  "species/danio-rerio.html",
  "species/pterophyllum-scalare.html",
  "de/species/astronotus-ocellatus.html",
  "de/species/neocaridina-davidi.html",
  "species/puntigrus-tetrazona/long-fin.html",
  "families/cichlidae.html",
  "de/families/loricariidae.html",
  "guides/index.html",
  "guides/first-verdict.html",
  "rules.html",
  "evidence.html",
  "sources.html",
  "readme.html",
  "developers.html",
  ...(readdirSync(site).includes("example") ? ["example/index.html"] : []),
];

const looks: readonly Look[] = [
  { width: 1280, dark: false },
  { width: 360, dark: true },
];

const searches = [
  { from: "index.html", typed: "neon tet", wanted: "/species/paracheirodon-innesi.html" },
  { from: "de/families/cichlidae.html", typed: "skalar", wanted: "/de/species/pterophyllum-scalare.html" },
  { from: "species/danio-rerio.html", typed: "moss barb", wanted: "/species/puntigrus-tetrazona/green.html" },
] as const;

const [desktop = { width: 1280, dark: false }] = looks;

/** What is wrong with what a page holds, wherever it stands. */
async function read(browser: Browser, { address }: Place): Promise<readonly string[]> {
  const told: string[] = [];
  for (const kind of kinds) {
    for (const look of looks) {
      const found = await visited(browser, address + kind, look, async (page) => [
        ...(await axeFindings(page)),
        ...(await sideways(page)),
      ]);
      told.push(...found.map((one) => `${kind} at ${look.width} px: ${one}`));
    }
  }
  return told;
}

/** What is wrong with the site in a place: files that do not load, what complains, and where the search leads. */
async function used(
  browser: Browser,
  { name, address }: Place,
  pages: readonly string[],
): Promise<readonly string[]> {
  const told: string[] = [];
  const use = async (page: string, see: (page: Page) => Promise<readonly string[]> = async () => []) => {
    const found = await visited(browser, address + page, desktop, see);
    told.push(...found.map((one) => `${name}, ${page}: ${one}`));
  };
  for (const page of pages) await use(page);
  for (const { from, typed, wanted } of searches)
    await use(from, (page) => searchFaults(page, typed, wanted));
  return told;
}

async function inChromium(): Promise<readonly string[]> {
  const program = chromiumHere();
  if (!program) {
    if (process.env.CI) return ["Chromium is not installed"];
    console.log("skip    Pages in Chromium: it is not installed");
    return [];
  }
  const browser = await launched(program);
  const places = [inFolder(site), await underPath(site)] as const;
  try {
    const [folder, below] = places;
    return [
      ...(await read(browser, folder)),
      ...(await used(browser, folder, kinds)),
      ...(await used(browser, below, [...kinds, "api/index.html"])),
    ];
  } finally {
    for (const place of places) place.close();
    await browser.close();
  }
}

const checks = [
  ["Every link leads somewhere, from a folder and under any address", () => brokenLinks(site)],
  ["Pages are read by all, at any width; the search finds; nothing complains", inChromium],
] as const;

for (const [name, check] of checks) {
  const started = performance.now();
  const problems = await check();
  const seconds = ((performance.now() - started) / 1000).toFixed(0);
  console.log(`${problems.length === 0 ? "ok" : "FAILED"}  ${name} (${seconds} s)`);
  for (const problem of problems.slice(0, most)) console.log(`        ${problem}`);
  if (problems.length > most) console.log(`        and ${problems.length - most} more`);
  if (problems.length > 0) process.exitCode = 1;
}
